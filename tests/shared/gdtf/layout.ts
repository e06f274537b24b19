import { expandMode, readFixtureType } from '../../../shared/gdtf/index.ts';

/** A mode's layout by the reader, in the lines of `naiveLayout`. @throws InputError */
export function layoutOf(description: string, modeName: string): string[] {
	const type = readFixtureType(description);
	const index = type.modes.findIndex(({ name }) => name === modeName);
	const mode = type.modes[index];
	if (!mode) throw new Error(`no mode ${modeName}`);
	return expandMode(type, mode, `modes[${index}]`)
		.channels.flatMap(({ break: number, slots, references, channel }) =>
			slots.map(
				(slot, i) =>
					`${number}.${slot} ${references.map((name) => `${name} > `).join('')}${channel.name} (${i + 1}/${slots.length})`,
			),
		)
		.sort();
}
