import { rethrowFaults } from '../functions/runtime/program-fault.ts';

/** Before each test file: an exception that nothing meant to throw fails the test instead of showing as a cell error. */
rethrowFaults(true);
