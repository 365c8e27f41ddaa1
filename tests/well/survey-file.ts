import { tellSaid } from "../../src/messages/print.ts";
import { foreignTable } from "../../src/source/foreign/table-text.ts";
import type { Desk } from "../../src/well/desk.ts";
import { resolveStations } from "../../src/well/resolve-trajectory.ts";
import { catalog } from "./resolve.ts";

/** The stations of a survey file as a definition that names it has them, with its faults and what was assumed. */
export const trajectoryOf = (name: string, bytes: Uint8Array) => {
	const desk: Desk = { catalog, faults: [], assumptions: [] };
	const files = (file: string) => ({ file, bytes });
	const table = resolveStations({ file: name }, ["trajectory", "actual", "survey"], undefined, files, desk);
	const foreign = foreignTable(bytes);
	const text = foreign !== undefined && "text" in foreign ? foreign.text : new TextDecoder().decode(bytes);
	return {
		stations: table?.rows ?? [],
		errors: desk.faults
			.filter(({ severity }) => severity === "error")
			.map(({ code, at }) => `${code} ${at.file}:${text.slice(0, at.range?.[0]).split("\n").length}`),
		assumed: desk.assumptions.map(({ what }) => tellSaid(what, { language: "en", units: "field" })),
	};
};
