import { describe, expect, it } from "vitest";
import { readYaml } from "../../src/source/read-yaml.ts";

const text = `well:
  name: Sorrel   # a remark
casing:
  - id: surface
    pipe: [{ od: 13 3/8 in, to: 1185 ft }]
  - id: production
    loads:
`;
const positions = readYaml(text, "well.yaml").value?.positions;
if (positions === undefined) throw new Error("the text could not be read");
const slice = ([start, end]: readonly [number, number]): string => text.slice(start, end);

describe("positions", () => {
	it("values and keys", () => {
		expect(slice(positions.valueRange(["well", "name"]).range)).toBe("Sorrel");
		expect(slice(positions.keyRange(["well", "name"]).range)).toBe("name");
		expect(slice(positions.valueRange(["casing", 0, "pipe", 0, "to"]).range)).toBe("1185 ft");
		expect(positions.valueRange(["well", "name"]).exact).toBe(true);
	});

	it("items of a list have no key of their own", () => {
		expect(slice(positions.keyRange(["casing", 0, "pipe", 0]).range)).toBe("{ od: 13 3/8 in, to: 1185 ft }");
	});

	it("what is missing is its nearest parent", () => {
		const weight = positions.valueRange(["casing", 0, "pipe", 0, "weight"]);
		expect(weight.exact).toBe(false);
		expect(slice(weight.range)).toBe("{ od: 13 3/8 in, to: 1185 ft }");
		expect(slice(positions.valueRange(["well", "operator", "name"]).range)).toBe("well");
		expect(positions.valueRange(["site", "ground"]).range[0]).toBe(0);
	});

	it("an empty value stands behind its colon", () => {
		const [start, end] = positions.valueRange(["casing", 1, "loads"]).range;
		expect(start).toBe(end);
		expect(positions.lineColumn(start).line).toBe(7);
	});

	it("as written", () => {
		expect(positions.written(["casing", 0, "pipe", 0, "od"])).toBe("13 3/8 in");
		expect(positions.written(["nowhere"])).toBeUndefined();
	});

	it("lines and columns from 1, CRLF and lone CR too", () => {
		const index = readYaml("a: 1\r\nb: 2\rc: 3\n", "x.yaml").value?.positions;
		const start = (key: string) => index?.lineColumn(index.valueRange([key]).range[0]);
		expect(start("a")).toEqual({ line: 1, column: 4 });
		expect(start("b")).toEqual({ line: 2, column: 4 });
	});
});
