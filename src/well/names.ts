/** Kebab-case of a name, without accents: `Upper Rushford Lime` → `upper-rushford-lime`. */
const kebab = (name: string): string =>
	name
		.normalize("NFD")
		.replace(/\p{M}/gu, "")
		.toLowerCase()
		.replace(/[^a-z0-9]+/g, "-")
		.replace(/^-|-$/g, "") || "unnamed";

/** Ids that tell the names apart: the kebab-case name, numbered from 2 where it repeats. */
export const distinctIds = (names: readonly string[]): string[] => {
	const seen = new Map<string, number>();
	return names.map((name) => {
		const id = kebab(name);
		const times = (seen.get(id) ?? 0) + 1;
		seen.set(id, times);
		return times === 1 ? id : `${id}-${times}`;
	});
};

/** How an annulus names pipe that is pumped down inside casing. */
export const TREATING_STRING = "treating-string";
