import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { calendarFile } from "../../../src/pipeline.ts";
import { renderCalendar } from "../../../src/render/calendar/render-calendar.ts";
import { findingsOf, starterText, understandText } from "../../starters.ts";

/** Unfolds as RFC 5545, 3.1 has it: a line break followed by a space is nothing. */
const unfold = (text: string): readonly string[] => text.replaceAll("\r\n ", "").split("\r\n");

const properties = (text: string, name: string): readonly string[] =>
	unfold(text).flatMap((line) => (line.startsWith(`${name}:`) || line.startsWith(`${name};`) ? [line] : []));

describe("deadlines as iCalendar (RFC 5545)", () => {
	const findings = findingsOf("horizontal");

	it("has one whole day for each deadline, none of them dropped, stamped with the day of issue", async () => {
		const { name, text } = await calendarFile(findings, "en");
		expect(name).toBe("sorrel-bench-unit-3-16h.deadlines.ics");
		expect(findings.due.length).toBeGreaterThan(3);
		expect(properties(text, "DTSTART")).toEqual(
			findings.due.map(({ due }) => `DTSTART;VALUE=DATE:${due.replaceAll("-", "")}`),
		);
		expect(new Set(properties(text, "DTSTAMP"))).toEqual(new Set(["DTSTAMP:20260504T000000Z"]));
	});

	it("keeps lines within 75 octets, ends each with CR LF, and opens and closes what it opens", async () => {
		const { text } = await calendarFile(findings, "en");
		const lines = text.split("\r\n");
		expect(lines.at(-1)).toBe("");
		for (const line of lines) {
			expect(line).not.toMatch(/[\r\n]/);
			expect(Buffer.byteLength(line), line).toBeLessThanOrEqual(75);
		}
		const begun = properties(text, "BEGIN").map((line) => line.replace("BEGIN", "END"));
		expect([...properties(text, "END")].sort()).toEqual([...begun].sort());
	});

	it("names the same deadline alike in every issue, and no two alike", async () => {
		const later = understandText(
			starterText("horizontal").replace("issued: 2026-05-04", "issued: 2026-05-20"),
		).findings;
		if (later === undefined) throw new Error("the changed starter has faults");
		const [first, second] = [await calendarFile(findings, "en"), await calendarFile(later, "en")];
		expect(properties(second.text, "UID")).toEqual(properties(first.text, "UID"));
		expect(new Set(properties(first.text, "UID")).size).toBe(findings.due.length);
		expect(second.text).not.toBe(first.text);
	});

	it("leaves out what is recorded as sent", async () => {
		const sent = understandText(
			starterText("horizontal").replace(
				"  notices:\n",
				"  notices:\n    - { to: the commission, rule: us-tx.report.log, sent: 2026-05-01 }\n",
			),
		).findings;
		if (sent === undefined) throw new Error("the changed starter has faults");
		const { text } = await calendarFile(sent, "en");
		expect(properties(text, "UID").some((line) => line.includes("us-tx.report.log"))).toBe(false);
		expect(properties(text, "UID")).toHaveLength(findings.due.length - 1);
	});

	it("escapes text as the standard has it", () => {
		const text = renderCalendar({
			name: "A; well",
			language: "en",
			issued: "2026-01-02",
			sequence: 3,
			entries: [{ id: "one@casebound", day: "2026-12-31", summary: "Due, soon; \\ §", description: "a\nb" }],
		});
		expect(properties(text, "NAME")).toEqual(["NAME:A\\; well"]);
		expect(properties(text, "X-WR-CALNAME")).toEqual(["X-WR-CALNAME:A\\; well"]);
		expect(properties(text, "SUMMARY")).toEqual(["SUMMARY:Due\\, soon\\; \\\\ §"]);
		expect(properties(text, "DESCRIPTION")).toEqual(["DESCRIPTION:a\\nb"]);
		expect(properties(text, "SEQUENCE")).toEqual(["SEQUENCE:3"]);
	});
});

describe("`bind --with calendar`", () => {
	const cli = new URL("../../../dist/main.js", import.meta.url).pathname;
	const starter = new URL("../../../seeds/starters/horizontal.yaml", import.meta.url).pathname;

	it("writes the same bytes wherever the clock stands", () => {
		const written = ["Pacific/Auckland", "America/Los_Angeles"].map((TZ) => {
			const out = mkdtempSync(join(tmpdir(), "casebound-"));
			try {
				execFileSync(
					process.execPath,
					[cli, "bind", starter, "--for", "handout", "--with", "calendar", "--out", out],
					{
						env: { ...process.env, TZ },
					},
				);
				const [file] = readdirSync(out).filter((name) => name.endsWith(".ics"));
				return readFileSync(join(out, file ?? "none"), "utf8");
			} finally {
				rmSync(out, { recursive: true, force: true });
			}
		});
		expect(new Set(written).size).toBe(1);
		expect(written[0]).toContain("BEGIN:VEVENT");
	});
});
