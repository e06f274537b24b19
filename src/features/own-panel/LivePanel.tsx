import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Profile } from '../../../shared/profile/index.ts';
import { quickSheetOf, type RigSheet } from '../../../shared/sheet/index.ts';
import { LonePanel } from '../bench/index.ts';
import { rigStore } from '../rig/index.ts';

/** One fixture of a profile, switched on, with no data in it. */
const aloneOf = (profile: Profile): RigSheet => ({
	...quickSheetOf(profile, { count: 1, linked: 'desk' }),
	profiles: [profile],
	desk: null,
	cables: [],
	terminators: [],
});

/** The panel as it is written down so far, to be pressed at once; it begins anew whenever a line or an answer changes it. */
export default function LivePanel({ profile }: { profile: Profile }): JSX.Element {
	const store = useMemo(() => rigStore(aloneOf(profile)), [profile.id]);
	return <LonePanel key={profile.id} store={store} />;
}
