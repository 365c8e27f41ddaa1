import { InvalidArgumentError } from "commander";

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
				if (found === undefined)
					throw new InvalidArgumentError(`"${word}" is no ${thing}; write ${allowed.join(", ")}.`);
				return found;
			});
