import type { MenuItem, Profile } from '../../../shared/profile/index.ts';

/** Every id of a profile, a line for each kind of thing, in order. */
export function idsOf(profile: Profile): string {
	const { panel } = profile;
	const list = (things: readonly { readonly id: string }[]) => things.map(({ id }) => id).join(' ');
	const lines = [
		`${profile.id}`,
		`emitters: ${list(profile.emitters)}`,
		`held: ${list(profile.held)}`,
		`programmes: ${list(profile.programmes)}`,
	];
	for (const mode of profile.modes) {
		lines.push(
			`mode ${mode.id}: ${mode.slots.map(({ id, at, fine }) => `${at}${fine ? `+${fine}` : ''}=${id}`).join(' ')}`,
		);
		for (const slot of mode.slots) {
			if (slot.drives.kind !== 'bands') continue;
			lines.push(`  ${slot.id}: ${slot.drives.bands.map(({ id, from, to }) => `${from}-${to}=${id}`).join(' ')}`);
		}
	}
	if (panel.kind === 'dip') {
		for (const slide of panel.slides)
			lines.push(`slide ${slide.id}: ${slide.positions.map(({ sets }) => Object.values(sets).join('+')).join(' ')}`);
		for (const field of panel.fields)
			lines.push(
				`switches ${field.switches.join(' ')} ${field.id}: ${field.choices.map(({ sets }) => Object.values(sets).join('+')).join(' ')}`,
			);
	} else {
		const item = (one: MenuItem, indent: string): void => {
			if (one.kind === 'choice')
				lines.push(`${indent}${one.id}: ${one.setting} ${one.options.map(({ value }) => value).join(' ')}`);
			else if (one.kind === 'number')
				lines.push(`${indent}${one.id}: ${one.setting} ${one.least} to ${one.most}${one.wraps ? ' and round' : ''}`);
			else if (one.kind === 'info') lines.push(`${indent}${one.id}: shows ${one.shows}`);
			else if (one.kind === 'action') lines.push(`${indent}${one.id}: does ${one.action}`);
			else {
				lines.push(`${indent}menu ${one.id}`);
				for (const leaf of one.items) item(leaf, `${indent}  `);
			}
		};
		for (const one of panel.menu) item(one, '');
	}
	return lines.join('\n');
}
