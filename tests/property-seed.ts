const given = process.env['OUNCEWISE_FUZZ_SEED'];

/**
 * What random tests start from: always the same, so that every run of the tests tries the same cases. Another number in
 * OUNCEWISE_FUZZ_SEED is another set of cases, `free` a new one in every run; a failure tells its seed.
 */
export const propertySeed = given === 'free' ? undefined : Number(given ?? 20_261_125);
