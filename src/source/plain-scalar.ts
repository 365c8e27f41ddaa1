const INTEGER = /^[-+]?(?:0|[1-9]\d*)$/;
const DECIMAL = /^[-+]?(?:(?:0|[1-9]\d*)(?:\.\d*)?|\.\d+)(?:e[-+]?\d+)?$/i;

/**
 * What an unquoted YAML value is. Narrower than the core schema of YAML 1.2 where that would change what was written:
 * only decimal numbers that a double holds are numbers; `007`, `0x1F`, `.inf`, `1e999`, long serial numbers and dates
 * stay text, and so do `yes`, `no`, `on` and `off`.
 *
 * @source yaml-1.2.2, § 10.3.2 (the core schema's tag resolution, which this narrows)
 */
export const plainScalar = (text: string): string | number | boolean | null => {
	if (/^(?:~|null|Null|NULL|)$/.test(text)) return null;
	if (/^(?:true|True|TRUE)$/.test(text)) return true;
	if (/^(?:false|False|FALSE)$/.test(text)) return false;
	if (!INTEGER.test(text) && !DECIMAL.test(text)) return text;
	const number = Number(text);
	const held = INTEGER.test(text) ? Number.isSafeInteger(number) : Number.isFinite(number);
	return held ? number + 0 : text;
};
