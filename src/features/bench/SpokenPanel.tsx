import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { Live } from '../../ui/index.ts';
import { describePanel } from '../../wording/index.ts';
import { useSeen } from './view.ts';

/** What a display says, for a screen reader: once fingers rest, not at each repeat of a key held down. */
export default function SpokenPanel({ fixture }: { fixture: string }): JSX.Element {
	const [store] = useSeen(({ store }) => {
		const unit = store.rig.gear.units.get(fixture);
		// it may have gone from the bench a moment before its panel does
		return unit ? [store, unit, store.look(fixture)] : [store];
	});
	const spoken = useRef('');
	const unit = store.rig.gear.units.get(fixture);
	if (!unit) return <Live text="" />;
	if (!unit.state.context.held) spoken.current = describePanel(store.rig, fixture);
	return <Live text={spoken.current} />;
}
