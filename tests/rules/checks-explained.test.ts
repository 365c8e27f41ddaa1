import { expect, it } from "vitest";
import { CHECKS } from "../../src/rules/check-register.ts";

it.each(CHECKS.map((check) => [check.id, check] as const))(
	"%s says what it is, what it looks at and why, in whole sentences",
	(_, { title, looksAt, explain }) => {
		expect(title).toMatch(/^[A-Z][^.]+$/u);
		expect(looksAt).toMatch(/^(?:[a-z]|CAS )[^.]+$/u);
		expect(explain).toMatch(/^[A-Z0-9].{20,}[.]$/u);
	},
);
