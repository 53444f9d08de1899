import type { Answer, CallName } from '../../core/contract/calls.ts';
import { checkCall } from '../../core/contract/check.ts';
import type { Service } from './service.ts';

/**
 * A host's whole part in a call: judges it, has it done, and turns what the program threw into a
 * sentence. What was thrown goes to `report`, with the call's name.
 */
export async function answerCall(
  service: Service,
  name: string,
  args: unknown,
  report: (name: string, thrown: unknown) => void,
): Promise<Answer<CallName>> {
  const checked = checkCall(name, args);
  if (!checked.ok) return checked;
  try {
    return await service.call(checked.value.name, checked.value.args);
  } catch (thrown) {
    report(name, thrown);
    return { ok: false, error: { code: 'defect', sentence: defectSentence(name) } };
  }
}

function defectSentence(name: string): string {
  return `The program failed at ${name}; this is its own fault. What was shown as saved is kept. Try again, and if it fails again close Borefolio and open it once more.`;
}
