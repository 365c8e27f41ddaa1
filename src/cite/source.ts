import type { SourceKey } from "./source-keys.ts";

/** A place in a published source: the key of `seeds/sources.yaml`, and the section, table, equation or page. */
export interface SourceRef {
	readonly key: SourceKey;
	readonly at?: string;
}

export const cite = (key: SourceKey, at?: string): SourceRef => (at === undefined ? { key } : { key, at });
