import type { JSX } from 'preact';
import type { CheckSpot } from '#words/checks/index.ts';
import { BackPicture } from './BackPicture.tsx';
import type { BackParts, Picture as Shown } from './picture.ts';
import { Cable, Desk, Front, Hall, Remote, Wall, WallRow } from './ScenePictures.tsx';

/** Where to look or to put a hand: the place ringed, and under it which box or cable of the line. Title and words say the same. */
export function Picture({ picture: { spot, back, line, mark } }: { picture: Shown }): JSX.Element {
	return (
		<div class="picture" data-spot={spot}>
			<svg class="picture-place" viewBox="0 0 340 150" aria-hidden="true">
				<Scene spot={spot} back={back} />
			</svg>
			{line.length > 0 && (
				<svg class="picture-line" viewBox={`0 0 ${28 * line.length + 8} 30`} aria-hidden="true">
					{line.slice(1).map(({ id }, i) => (
						<path
							key={id}
							class="picture-cable"
							data-mark={mark?.what === 'cable' && mark.box === i + 1}
							d={`M${28 * i + 26} 15h10`}
						/>
					))}
					{line.map(({ id, kind }, i) => (
						<rect
							key={id}
							class="picture-box"
							data-kind={kind}
							data-mark={
								mark?.what === 'others' ? kind === 'fixture' && mark.box !== i : mark?.what === 'box' && mark.box === i
							}
							x={28 * i + 8}
							y={kind === 'fixture' ? 6 : 3}
							width="18"
							height={kind === 'fixture' ? 18 : 24}
							rx={kind === 'fixture' ? 4 : 1}
						/>
					))}
				</svg>
			)}
		</div>
	);
}

function Scene({ spot, back }: { spot: CheckSpot; back: BackParts | null }): JSX.Element {
	switch (spot) {
		case 'wall':
			return <Wall />;
		case 'row':
			return <WallRow />;
		case 'lens':
			return <Front />;
		case 'cable':
			return <Cable />;
		case 'desk-screen':
		case 'desk-output':
			return <Desk spot={spot} />;
		case 'remote':
			return <Remote />;
		case 'hall':
			return <Hall />;
		default:
			return (
				<BackPicture
					spot={spot}
					back={back ?? { panel: 'code', keys: 4, battery: false, sensor: false, link: false }}
				/>
			);
	}
}
