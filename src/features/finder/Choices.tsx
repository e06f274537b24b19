import type { ComponentChildren, JSX } from 'preact';

export interface Choice {
	readonly id: string;
	readonly name: string;
	/** A line that tells it from its neighbours. */
	readonly more?: string;
	readonly picture?: ComponentChildren;
}

interface Props {
	choices: readonly Choice[];
	onChoose: (id: string) => void;
	/** Set closer: for what stands beside the main way. */
	small?: boolean;
	/** Row under row, for a long list to be run down by eye. */
	rows?: boolean;
}

/** A few things to choose from, each a large button. */
export function Choices({ choices, onChoose, small = false, rows = false }: Props): JSX.Element {
	return (
		<ul class="choices" data-small={small} data-rows={rows}>
			{choices.map(({ id, name, more, picture }) => (
				<li key={id}>
					<button type="button" class="choice" data-choice={id} onClick={() => onChoose(id)}>
						{picture}
						<span class="choice-words">
							<span class="choice-name">{name}</span>
							{more !== undefined && <span class="choice-more">{more}</span>}
						</span>
					</button>
				</li>
			))}
		</ul>
	);
}
