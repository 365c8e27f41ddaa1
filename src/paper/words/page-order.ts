/** What stands on a page, in order: words of a template, or a part that code makes from the results. */
export type OrderItem = { readonly words: string } | { readonly part: string };

export interface OrderSection {
	readonly id: string;
	readonly title: string;
	/** Once the work is finished. */
	readonly titleDone?: string;
	readonly newPage: boolean;
	/** Keeps to one page. */
	readonly onePage: boolean;
	/** The paper's title heads it. */
	readonly headless: boolean;
	/** Behind the paper itself: detail that a reader looks up and need not read. Lettered, where sections are numbered. */
	readonly appendix: boolean;
	readonly content: readonly OrderItem[];
}

/** The page order of one paper in one language: `templates/<language>/<paper>/order.yaml`. */
export interface PageOrder {
	readonly title: string;
	/** Of a well that has been drilled. */
	readonly titleBuilt?: string;
	readonly subtitle?: string;
	readonly numbered: boolean;
	readonly setting: "office" | "public" | "field" | "screen";
	/** Set on the sheet of a job, letter or A4; on letter with wide margins where absent. */
	readonly sheet?: "job";
	readonly sections: readonly OrderSection[];
}

/**
 * Checks the shape of a page order.
 *
 * @throws Error naming the file and the place, for anything it does not know
 */
export const pageOrder = (data: unknown, file: string): PageOrder => {
	const fail = (what: string): never => {
		throw new Error(`${file}: ${what}`);
	};
	const record = (node: unknown, where: string): Record<string, unknown> =>
		typeof node === "object" && node !== null && !Array.isArray(node)
			? (node as Record<string, unknown>)
			: fail(`${where} must be a mapping`);
	const words = (node: unknown, where: string): string =>
		typeof node === "string" && node !== "" ? node : fail(`${where} must be words`);
	const root = record(data, "the file");
	const sections = Array.isArray(root["sections"]) ? root["sections"] : fail("sections must be a list");
	const setting = words(root["setting"], "setting");
	if (setting !== "office" && setting !== "public" && setting !== "field" && setting !== "screen")
		fail(`setting "${setting}" is unknown`);
	return {
		title: words(root["title"], "title"),
		...(root["title_built"] === undefined ? {} : { titleBuilt: words(root["title_built"], "title_built") }),
		...(root["subtitle"] === undefined ? {} : { subtitle: words(root["subtitle"], "subtitle") }),
		...(root["sheet"] === "job" ? { sheet: "job" as const } : {}),
		numbered: root["numbered"] === true,
		setting: setting as PageOrder["setting"],
		sections: sections.map((node: unknown, i: number) => {
			const section = record(node, `sections[${i}]`);
			const content = Array.isArray(section["content"])
				? section["content"]
				: fail(`sections[${i}].content must be a list`);
			return {
				id: words(section["id"], `sections[${i}].id`),
				title: words(section["title"], `sections[${i}].title`),
				...(section["title_done"] === undefined
					? {}
					: { titleDone: words(section["title_done"], `sections[${i}].title_done`) }),
				newPage: section["new_page"] === true,
				onePage: section["one_page"] === true,
				headless: section["headless"] === true,
				appendix: section["appendix"] === true,
				content: content.map((item: unknown, j: number): OrderItem => {
					const where = `sections[${i}].content[${j}]`;
					const entry = record(item, where);
					if ("words" in entry) return { words: words(entry["words"], `${where}.words`) };
					if ("part" in entry) return { part: words(entry["part"], `${where}.part`) };
					return fail(`${where} must name words or a part`);
				}),
			};
		}),
	};
};
