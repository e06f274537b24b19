import type { JSX } from 'preact';
import { useGrown } from './growing.ts';

interface Props {
	of: readonly { readonly value: string; readonly name: string }[];
	/** The one that is chosen: it is there from the first. */
	value: string;
}

/** What can be chosen in a box, drawn bit by bit: a rig may have hundreds of lights. */
export function Choices({ of, value }: Props): JSX.Element {
	const count = useGrown(of.length);
	return (
		<>
			{of.map(
				(each, i) =>
					(i < count || each.value === value) && (
						<option key={each.value} value={each.value}>
							{each.name}
						</option>
					),
			)}
		</>
	);
}
