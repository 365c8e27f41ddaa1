import { InvalidArgumentError } from "commander";
import { nearestName } from "../diagnostics/nearest-name.ts";
import { LANGUAGES, type Language } from "../document/document.ts";

/** Parses `a,b,c`, each of them one of the allowed words. */
export const commaList =
	<T extends string>(thing: string, allowed: readonly T[]) =>
	(text: string): readonly T[] =>
		text
			.split(",")
			.map((word) => word.trim())
			.filter((word) => word !== "")
			.map((word) => {
				const found = allowed.find((candidate) => candidate === word);
				if (found === undefined) {
					const near = nearestName(word, allowed);
					const meant = near === undefined ? "" : ` Did you mean ${near}?`;
					throw new InvalidArgumentError(`"${word}" is no ${thing}; write ${allowed.join(", ")}.${meant}`);
				}
				return found;
			});

/** A language of the papers, or two that stand side by side. */
export const SPOKEN = [...LANGUAGES, "en+es"] as const;
export type Spoken = (typeof SPOKEN)[number];

/** The language of the papers, and the one beside it. */
export const languagesOf = (spoken: Spoken): { readonly language: Language; readonly second?: Language } =>
	spoken === "en+es" ? { language: "en", second: "es" } : { language: spoken };
