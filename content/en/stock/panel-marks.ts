import { counted } from '../locale/index.ts';
import { panelWords } from './panel-words.ts';

type Item = keyof typeof panelWords.items;
const said = (sense: string): string => panelWords.items[sense as Item]?.say.toLowerCase() ?? sense;
const valueSaid = (value: string): string =>
	(panelWords.values as Readonly<Record<string, { readonly say: string }>>)[value]?.say.toLowerCase() ??
	value.slice(value.indexOf('.') + 1);

/** What is said of a place in the list of a menu, by the code of its mark. */
export const panelMarkWords = {
	'item-unknown': ({ text }: { text: string }) =>
		`We don’t know ‘${text}’. It does nothing here until you pick what it sets.`,
	'item-guess': ({ text, sense }: { text: string; sense: string }) => `‘${text}’ was taken as: ${said(sense)}. Right?`,
	'item-two': ({ text, senses }: { text: string; senses: readonly string[] }) =>
		`‘${text}’ could mean: ${senses.map(said).join('; or ')}. It does nothing here until you pick one.`,
	'value-unknown': ({ text, item, isOfRange }: { text: string; item: string; isOfRange: boolean }) =>
		isOfRange
			? `We don’t know ‘${text}’ in ‘${item}’. It does nothing here. Write the values out, with = and what each is.`
			: `We don’t know ‘${text}’ in ‘${item}’. It does nothing here until you pick what it means.`,
	'value-guess': ({ text, item, value }: { text: string; item: string; value: string }) =>
		`‘${text}’ in ‘${item}’ was taken as: ${valueSaid(value)}. Right?`,
	'value-two': ({ text, item }: { text: string; item: string }) =>
		`‘${text}’ in ‘${item}’ could be two things. It does nothing here until you pick one.`,
	'value-twice': ({ text, other }: { text: string; other: string }) =>
		`‘${text}’ is the same as ‘${other}’ here. It stays in the list, and does nothing here.`,
	'by-order': ({ item, count }: { item: string; count: number }) =>
		`‘${item}’ goes by number. We took the ${count} in the order of the chart. Check the first and the last in the manual, or as said above.`,
	'values-missing': ({ text }: { text: string }) =>
		`What can ‘${text}’ be set to? Write it after a colon: ${text}: one, two.`,
	'values-few': ({ text }: { text: string }) =>
		`‘${text}’ needs two values or more that we know. It does nothing here until then.`,
	'values-many': ({ text, most }: { text: string; most: number }) =>
		`‘${text}’ is too long a list. Of those past the first ${most}, the bench has only the ones it knows.`,
	'values-assumed': ({ text }: { text: string }) =>
		`We took Off and On for ‘${text}’. Write its values if they differ.`,
	'range-assumed': ({ text, least, most }: { text: string; least: number; most: number }) =>
		`We took ${least} to ${most} for ‘${text}’. Write the range if it differs: ${text} ${least}-${most}.`,
	'range-off': ({
		text,
		from,
		to,
		least,
		most,
	}: {
		text: string;
		from: number;
		to: number;
		least: number;
		most: number;
	}) => `‘${text}’ runs from ${from} to ${to}. The bench takes ${least} to ${most}, so your presses there will differ.`,
	'range-none': ({ text, least, most }: { text: string; least: number; most: number }) =>
		`The bench takes ${least} to ${most} for ‘${text}’. It does nothing here until its range fits.`,
	'label-long': ({ text, room }: { text: string; room: number }) =>
		`‘${text}’ is too long: there’s room for ${counted(room, 'sign', 'signs')}. Write what the display shows, then = and what it is.`,
	'label-twice': ({ text }: { text: string }) => `‘${text}’ is here twice. On the display nobody can tell them apart.`,
	'setting-twice': ({ text }: { text: string }) => `‘${text}’ sets the same as a line before it. It does nothing here.`,
	'too-deep': ({ text }: { text: string }) =>
		`‘${text}’ goes deeper than the bench can. What’s in it does nothing here.`,
	'indent-off': ({ text }: { text: string }) =>
		`‘${text}’ doesn’t line up with the lines above. Set it in as far as the lines it belongs with.`,
	'not-acted': ({ text }: { text: string }) => `‘${text}’ does nothing here on a panel like this.`,
	'switch-count': ({ text, wanted, found }: { text: string; wanted: number; found: number }) =>
		`Switches ‘${text}’ can stand ${wanted} ways, and ${counted(found, 'value is', 'values are')} listed. List one for each, all down first.`,
	'switch-off': ({ text }: { text: string }) => `A switch of ‘${text}’ is in another line too. Name each switch once.`,
	missing: ({ sense }: { sense: string }) =>
		sense === 'work'
			? 'No line says where the light comes from (desk, static colour, programme). On the bench it stays with the desk.'
			: `No line sets the ${said(sense)}. Look for it in the manual, or as said above.`,
	'no-items': () => 'Write the menu first, a line for each item.',
	'key-missing': ({ key }: { key: string }) =>
		`No key ${key === 'up' || key === 'right' ? 'goes up' : key === 'down' || key === 'left' ? 'goes down' : key === 'page' ? 'goes to the next function' : 'goes in and keeps'}. Give one of the keys that job.`,
	'key-twice': () => 'Two keys have the same job. Give each its own.',
	'panel-off': () =>
		'We can’t make a panel of this list, so the plain one stands in. Take out the last line you wrote.',
	'too-long': ({ lines }: { lines: number }) =>
		`The list was read up to line ${lines}. Leave out what isn’t on the panel.`,
} as const;
