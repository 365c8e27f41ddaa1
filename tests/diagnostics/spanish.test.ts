import { describe, expect, it } from "vitest";
import { printDiagnostics } from "../../src/diagnostics/print.ts";
import { readYaml } from "../../src/source/read-yaml.ts";

const inSpanish = (text: string): string =>
	printDiagnostics(readYaml(text, "pozo.yaml").diagnostics, new Map([["pozo.yaml", { text }]]), {
		color: false,
		width: 120,
		reader: { language: "es", units: "metric" },
	});

describe("faults in Spanish", () => {
	it("are told, labelled and counted in Spanish", () => {
		const printed = inSpanish("a:\n\tb: 1\n");
		expect(printed).toContain("la sangría de la línea lleva un tabulador");
		expect(printed).toMatch(/se espera +espacios; YAML no cuenta los tabuladores como sangría/);
		expect(printed).toMatch(/arreglo +cambie el tabulador por espacios/);
		expect(printed).toMatch(/^1 error\n$/m);
		expect(inSpanish("a: { b: 1, c: 2, c: 3, c: 4 }\n")).toContain("2 errores");
	});
});
