const OUTSIDE = /^(https?:|mailto:)/i;

/** Where a link leads: an address outside, or an id of the paper. */
export const linkTarget = (to: string): string => (OUTSIDE.test(to) ? to : `#${to.replace(/^#/, "")}`);
