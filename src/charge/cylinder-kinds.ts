/** What a cylinder is for. A virgin cylinder is sold filled and, unless returnable, never refilled. */
export const cylinderKinds = ['virgin', 'reclaimed', 'recovery', 'nitrogen'] as const;

export type CylinderKind = (typeof cylinderKinds)[number];
