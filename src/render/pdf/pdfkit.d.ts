/** The part of pdfkit 0.20 that `write.ts` and `paint.ts` use; pdfkit ships no declarations. */
declare module "pdfkit" {
	import type { Readable } from "node:stream";

	export interface StructureContent {
		readonly refs: readonly unknown[];
	}
	export interface StructureElement {
		readonly dictionary: {
			readonly data: { readonly S: string; A?: { readonly O: "List"; readonly ListNumbering: string } };
		};
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
	export interface OutlineItem {
		addItem(
			title: string,
			options: { pageNumber: number; top: number; left: number; expanded?: boolean },
		): OutlineItem;
	}
	export interface DocumentOptions {
		autoFirstPage: boolean;
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
	export default class PDFDocument extends Readable {
		constructor(options: DocumentOptions);
		readonly page: { readonly width: number; readonly height: number };
		readonly outline: OutlineItem;
		readonly info: Record<string, string | Date>;
		addPage(options: { size: readonly [number, number]; margin: number }): this;
		save(): this;
		restore(): this;
		translate(x: number, y: number): this;
		lineWidth(width: number): this;
		moveTo(x: number, y: number): this;
		lineTo(x: number, y: number): this;
		rect(x: number, y: number, width: number, height: number): this;
		stroke(color: string): this;
		fillColor(color: string): this;
		font(source: unknown, size?: number): this;
		fontSize(size: number): this;
		text(text: string, x: number, y: number, options: { lineBreak: false; baseline: "alphabetic" }): this;
		struct(role: string, options?: StructureOptions): StructureElement;
		addStructure(element: StructureElement): this;
		markStructureContent(role: string): StructureContent;
		markContent(role: "Artifact", options?: { type: "Pagination" | "Layout" }): this;
		endMarkedContent(): this;
		addNamedDestination(name: string, kind: "XYZ", left: number, top: number, zoom: null): void;
		goTo(x: number, y: number, width: number, height: number, name: string, options: LinkOptions): this;
		link(x: number, y: number, width: number, height: number, url: string, options: LinkOptions): this;
		file(data: Uint8Array, options: FileOptions): unknown;
		appendXML(xml: string): void;
		end(): void;
	}
}
