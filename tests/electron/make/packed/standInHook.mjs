/** Puts a stand-in in the place of Electron, whose runtime is not there in tests. */
import { registerHooks } from 'node:module';

const standIn = new URL('./electronStandIn.mjs', import.meta.url).href;

registerHooks({
  resolve: (specifier, context, next) =>
    specifier === 'electron' ? { url: standIn, shortCircuit: true } : next(specifier, context),
});
