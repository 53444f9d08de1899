import type { PracticeFile } from './practice.ts';
import handDrilled from './practices/handDrilled.json' with { type: 'json' };
import machineRock from './practices/machineRock.json' with { type: 'json' };

/** The practices that come with the program. */
export const shippedPractices = [handDrilled, machineRock] as readonly PracticeFile[];
