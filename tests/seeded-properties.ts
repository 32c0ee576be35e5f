import fc from 'fast-check';
import { propertySeed } from './property-seed.ts';

// Before each test file: every property has the one seed.
fc.configureGlobal(propertySeed === undefined ? {} : { seed: propertySeed });
