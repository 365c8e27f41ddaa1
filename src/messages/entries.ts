/**
 * An entry: its text in ICU message syntax (`{name}`, `{count, plural, one {# joint} other {# joints}}`), and a note that
 * tells a translator where it is read and what its facts are.
 */
export type Entry = readonly [text: string, note: string];

export type Entries = Readonly<Record<string, Entry>>;

/** The same codes in another language: a missing one, and one too many, do not compile. */
export type Translation<E extends Entries> = { readonly [C in keyof E]: string };
