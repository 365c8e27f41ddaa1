import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/*
 * What the shipped tool is made of besides its own code: libraries taken into the bundle, and those that npm installs
 * beside it.
 */

/** `node_modules/a/node_modules/@b/c` of a module's file: the package it belongs to. */
export const packagePlaceOf = (file) =>
	/^.*(node_modules\/(?:@[^/]+\/)?[^/]+)/u.exec(file.replaceAll("\\", "/"))?.[0];

/** Every package that ships or is installed with the tool, by name and version. */
export const shippedPackages = (root, bundledPlaces) => {
	const { packages } = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8"));
	const bundled = bundledPlaces.map((place) => ({ place, how: "in the bundle" }));
	const installed = Object.entries(packages)
		.filter(([place, { dev, devOptional }]) => place !== "" && dev !== true && devOptional !== true)
		.map(([place]) => ({ place: join(root, place), how: "installed beside the tool" }));
	const found = new Map();
	for (const { place, how } of [...bundled, ...installed]) {
		const each = describe(root, place, packages, how);
		const key = `${each.name} ${each.version}`;
		if (!found.has(key)) found.set(key, each);
	}
	return [...found.values()].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
};

const describe = (root, place, packages, how) => {
	const inside = place.slice(root.length).replaceAll("\\", "/").replace(/^\//u, "");
	const name = inside.split("node_modules/").at(-1);
	const locked = packages[inside] ?? {};
	// Prebuilt modules of other platforms are listed and not there.
	const manifest = existsSync(join(place, "package.json"))
		? JSON.parse(readFileSync(join(place, "package.json"), "utf8"))
		: {};
	const text = textIn(place);
	return {
		name,
		version: manifest.version ?? locked.version,
		license: licenseOf(manifest.license ?? manifest.licenses ?? locked.license, text),
		text,
		by: byOf(manifest),
		how,
	};
};

const byOf = ({ author, repository }) => [author?.name ?? author, repository?.url ?? repository].filter(Boolean).join(", ");

/** Some packages have the words of their terms and no name for them. */
const licenseOf = (license, text) => {
	if (license === undefined && text.includes("Permission is hereby granted, free of charge")) return "MIT";
	if (typeof license === "string") return license;
	if (Array.isArray(license)) return license.map((each) => each.type ?? each).join(" OR ");
	return license?.type ?? "not stated";
};

/** The files that hold the terms; packages name them in many ways. */
const textIn = (place) => {
	if (!existsSync(place)) return "";
	return readdirSync(place)
		.filter((name) => /^(?:licen[cs]e|copying|notice|ofl)(?:[._-]|$)/iu.test(name) && !name.endsWith(".js"))
		.sort()
		.map((name) => readFileSync(join(place, name), "utf8").trim())
		.join("\n\n");
};

const FENCE = "````";

/** The same as a document. Terms that several packages share word for word stand once. */
export const thirdPartyText = (packages) => {
	const texts = new Map();
	for (const { name, version, text } of packages)
		if (text !== "") texts.set(text, [...(texts.get(text) ?? []), `${name} ${version}`]);
	return [
		"# What this tool is made of besides its own code",
		"",
		"Made by the build from the packages themselves. Papers and drawings are set in Source Sans 3, which comes with the package",
		"`@expo-google-fonts/source-sans-3` under the SIL Open Font License 1.1.",
		"",
		"| package | version | license | where |",
		"|---|---|---|---|",
		...packages.map(({ name, version, license, how }) => `| ${name} | ${version} | ${license} | ${how} |`),
		"",
		"## Terms",
		"",
		"These packages name their terms and ship no text of them:",
		"",
		...packages
			.filter(({ text }) => text === "")
			.map(({ name, version, license, by }) => `- ${name} ${version}: ${license}${by === "" ? "" : `; ${by}`}`),
		...[...texts].flatMap(([text, names]) => ["", `### ${names.join(", ")}`, "", FENCE, text, FENCE]),
		"",
	].join("\n");
};
