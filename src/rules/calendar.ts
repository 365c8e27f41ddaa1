/** Days of the civil calendar, as ISO dates; no clock is read. */

const MILLISECONDS_A_DAY = 86_400_000;
const SUNDAY = 0;
const SATURDAY = 6;

const stamp = (date: string): number => Date.parse(`${date}T00:00:00Z`);
const iso = (milliseconds: number): string =>
	new Date(milliseconds).toISOString().slice(0, "0000-00-00".length);

export const addDays = (date: string, days: number): string => iso(stamp(date) + days * MILLISECONDS_A_DAY);

/** Whole days from one date to a later one; negative where it is the earlier. */
export const daysBetween = (from: string, to: string): number =>
	(stamp(to) - stamp(from)) / MILLISECONDS_A_DAY;

/** The same day so many months before (negative: after), or the last day of that month where it has no such day. */
export const monthsBefore = (date: string, months: number): string => {
	const day = new Date(stamp(date));
	const first = new Date(Date.UTC(day.getUTCFullYear(), day.getUTCMonth() - months, 1));
	const last = new Date(Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + 1, 0)).getUTCDate();
	return iso(Date.UTC(first.getUTCFullYear(), first.getUTCMonth(), Math.min(day.getUTCDate(), last)));
};

export const yearOf = (date: string): number => new Date(stamp(date)).getUTCFullYear();

const isBusinessDay = (date: string, holidays: readonly string[]): boolean => {
	const day = new Date(stamp(date)).getUTCDay();
	return day !== SUNDAY && day !== SATURDAY && !holidays.includes(date);
};

/** The date so many business days before (negative) or after a date; the date itself is not counted. */
export const addBusinessDays = (date: string, days: number, holidays: readonly string[]): string => {
	const step = Math.sign(days);
	let left = Math.abs(days);
	let at = date;
	while (left > 0) {
		at = addDays(at, step);
		if (isBusinessDay(at, holidays)) left -= 1;
	}
	return at;
};
