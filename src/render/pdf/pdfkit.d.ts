/** The part of pdfkit 0.20 that the writing of papers uses; pdfkit ships no declarations. */
declare module "pdfkit" {
	import type { Readable } from "node:stream";

	export interface StructureContent {
		readonly refs: readonly unknown[];
	}
	export interface StructureElement {
		readonly dictionary: { readonly data: { A?: { readonly O: "List"; readonly ListNumbering: string } } };
		add(child: StructureElement | StructureContent): StructureElement;
		end(): void;
	}
	export interface StructureOptions {
		alt?: string;
		title?: string;
		lang?: string;
		scope?: "Column" | "Row";
		bbox?: readonly [number, number, number, number];
		placement?: string;
	}
	export interface LinkOptions {
		structParent?: StructureElement;
		/** A String object: pdfkit writes plain strings as names. */
		Contents?: unknown;
	}
	export interface AnnotationOptions extends LinkOptions {
		Subtype: "Link";
		A: { S: "GoToR"; F: unknown; D: unknown };
	}
	export interface OutlineItem {
		addItem(
			title: string,
			options: { pageNumber: number; top: number; left: number; expanded?: boolean },
		): OutlineItem;
	}
	export interface DocumentOptions {
		autoFirstPage: boolean;
		/** None: no typeface of the viewer's is asked for. */
		font: null;
		compress: boolean;
		pdfVersion: string;
		subset: "PDF/A-3a";
		tagged: boolean;
		lang: string;
		displayTitle: boolean;
		info: Record<string, string | Date>;
	}
	export interface FileOptions {
		name: string;
		type: string;
		description?: string;
		relationship: string;
		creationDate: Date;
		modifiedDate: Date;
	}
	export interface TextOptions {
		lineBreak: false;
		baseline: "alphabetic";
		/** Percent of the typeface's own width. */
		horizontalScaling?: number;
	}
	export type FillRule = "non-zero" | "even-odd";
	export default class PDFDocument extends Readable {
		constructor(options: DocumentOptions);
		readonly page: { readonly width: number; readonly height: number };
		readonly outline: OutlineItem;
		readonly info: Record<string, string | Date>;
		addPage(options: { size: readonly [number, number]; margin: number }): this;
		save(): this;
		restore(): this;
		translate(x: number, y: number): this;
		rotate(degrees: number, options: { origin: readonly [number, number] }): this;
		lineWidth(width: number): this;
		lineCap(cap: "butt" | "round" | "square"): this;
		lineJoin(join: "miter" | "round" | "bevel"): this;
		dash(lengths: readonly number[]): this;
		moveTo(x: number, y: number): this;
		lineTo(x: number, y: number): this;
		rect(x: number, y: number, width: number, height: number): this;
		path(data: string): this;
		clip(): this;
		stroke(color: string): this;
		fill(color: string, rule?: FillRule): this;
		fillAndStroke(fill: string, stroke: string, rule?: FillRule): this;
		fillColor(color: string): this;
		fillOpacity(opacity: number): this;
		registerFont(name: string, source: unknown): this;
		font(name: string, size?: number): this;
		text(text: string, x: number, y: number, options: TextOptions): this;
		struct(role: string, options?: StructureOptions): StructureElement;
		addStructure(element: StructureElement): this;
		markStructureContent(role: string): StructureContent;
		markContent(role: "Artifact", options?: { type: "Pagination" | "Layout" }): this;
		endMarkedContent(): this;
		addNamedDestination(name: string, kind: "XYZ", left: number, top: number, zoom: null): void;
		goTo(x: number, y: number, width: number, height: number, name: string, options: LinkOptions): this;
		annotate(x: number, y: number, width: number, height: number, options: AnnotationOptions): this;
		link(x: number, y: number, width: number, height: number, url: string, options: LinkOptions): this;
		file(data: Uint8Array, options: FileOptions): unknown;
		appendXML(xml: string, newline?: boolean): void;
		end(): void;
	}
}
