/** What a code or a check is called, and what it means, in the reader's language. */
export type Explained = readonly [title: string, explain: string];
