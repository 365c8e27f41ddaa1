import type PDFDocument from "pdfkit";
import type { StructureElement } from "pdfkit";
import type { Role, Tag } from "../tags.ts";

/** A structure element with its role. */
export interface Marked {
	readonly role: Role;
	readonly element: StructureElement;
}

interface Rectangle {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

/** Says what each thing that is painted means. */
export interface Marks {
	readonly root: Marked;
	/** The element of a tag, made when the tag is first met; a drawing tells where it stands. */
	readonly elementOf: (tag: Tag, parent: Marked, place?: Rectangle) => Marked;
	/** A new element with no tag; of words in another language than the paper, with theirs. */
	readonly within: (parent: Marked, role: Role, lang?: string) => Marked;
	readonly asContent: (of: Marked, paint: () => void) => void;
	readonly asArtifact: (kind: "Pagination" | "Layout", paint: () => void) => void;
	/** Makes a rectangle of the page lead somewhere. `says` is read to those who cannot see it. */
	readonly annotate: (of: Marked, target: string, place: Rectangle, says: string) => void;
	/** A link's annotation takes its page when its element ends: it ends on its own page. */
	readonly end: (of: Marked) => void;
}

/** A named place of another file beside this one. */
const ELSEWHERE = /^([^#:/]+\.pdf)#(.+)$/;

/** @source iso-32000-1, 14.7 (structure) and 14.8 (tagged PDF) */
export const makeMarks = (context: PDFDocument): Marks => {
	const document = context.struct("Document");
	context.addStructure(document);
	const root: Marked = { role: "Document", element: document };
	const elements = new Map<Tag, Marked>();
	const within = (parent: Marked, role: Role, lang?: string): Marked => {
		const element = context.struct(role, lang === undefined ? {} : { lang });
		parent.element.add(element);
		return { role, element };
	};
	const elementOf = (tag: Tag, parent: Marked, place?: Rectangle): Marked => {
		const known = elements.get(tag);
		if (known !== undefined) return known;
		const { role, alt, scope } = tag;
		const element = context.struct(role, {
			...(alt === undefined ? {} : { alt }),
			...(scope === undefined ? {} : { scope }),
			...(place === undefined
				? {}
				: { bbox: [place.x, place.y, place.x + place.width, place.y + place.height] }),
		});
		// pdfkit has no option for the attributes of a list.
		if (role === "L") element.dictionary.data.A = { O: "List", ListNumbering: tag.numbering ?? "None" };
		(tag.within === undefined ? parent : elementOf(tag.within, root)).element.add(element);
		const made = { role, element };
		elements.set(tag, made);
		return made;
	};
	return {
		root,
		elementOf,
		within,
		asContent: ({ role, element }, paint) => {
			const content = context.markStructureContent(role);
			paint();
			context.endMarkedContent();
			element.add(content);
		},
		asArtifact: (type, paint) => {
			context.markContent("Artifact", { type });
			paint();
			context.endMarkedContent();
		},
		annotate: ({ element }, target, { x, y, width, height }, says) => {
			// pdfkit writes a String object as a text string, a plain string as a name.
			const options = { structParent: element, Contents: new String(says) };
			if (target.startsWith("#")) context.goTo(x, y, width, height, target.slice(1), options);
			else if (ELSEWHERE.test(target)) {
				const [, file, id] = ELSEWHERE.exec(target) ?? [];
				const action = {
					S: "GoToR",
					F: new String(file),
					D: new String(id),
				} as const;
				context.annotate(x, y, width, height, {
					...options,
					Subtype: "Link",
					A: action,
				});
			} else context.link(x, y, width, height, target, options);
		},
		end: ({ element }) => element.end(),
	};
};
