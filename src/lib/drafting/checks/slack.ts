/** Lengths are compared with this much slack, so that a number worked out to meet a limit does meet it. mm */
export const slack = 1e-6;
