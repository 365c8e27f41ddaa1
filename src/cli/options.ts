import { InvalidArgumentError } from "commander";
import { nearestName } from "../diagnostics/nearest-name.ts";

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
