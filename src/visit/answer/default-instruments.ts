import { airProbeK, liquidGaugePa, probeK, suctionGaugePa } from '../instrument-accuracy.ts';
import type { Instruments } from './facts.ts';

/** What instruments may be wrong by when nobody says. */
export const defaultInstruments: Instruments = { suctionGaugePa, liquidGaugePa, probeK, airProbeK };
