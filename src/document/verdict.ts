/** What a check concludes. A check never answers with a bare yes or no, and never passes on silence. */
export const VERDICTS = ["met", "not met", "cannot tell", "needs judgement", "does not apply"] as const;
export type Verdict = (typeof VERDICTS)[number];
