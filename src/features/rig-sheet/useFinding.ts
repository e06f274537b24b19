import { useEffect, useState } from 'preact/hooks';
import { openEngine } from '../../engine/index.ts';
import { DEVICE, followKept, KEPT, textAt } from '../../storage/index.ts';
import type { Finding } from '../finder/index.ts';

/** The finder's part comes only where its walk names this rig. */
const mayHaveFound = (id: string): boolean => textAt(DEVICE, KEPT.walk.key)?.includes(id) ?? false;

/**
 * What the finder found on a rig, until it is noted or left.
 * @param id the rig's id on the device
 */
export function useFinding(id: string): { readonly finding: Finding | null; close(): void } {
	const [finding, show] = useState<Finding | null>(null);
	useEffect(() => {
		let isWanted = true;
		const look = (): void => {
			if (!mayHaveFound(id)) {
				show(null);
				return;
			}
			import('../finder/index.ts')
				.then(({ findings }) => findings())
				.then(({ findingOf }) => findingOf(DEVICE, openEngine().ask, id))
				.then(
					(found) => {
						if (isWanted) show(found);
					},
					// with no network and nothing kept of the finder it is offered another time
					() => undefined,
				);
		};
		look();
		const unfollow = followKept(look);
		return () => {
			isWanted = false;
			unfollow();
		};
	}, [id]);
	return {
		finding,
		close() {
			const { began } = finding ?? {};
			show(null);
			if (began !== undefined)
				void import('../finder/index.ts')
					.then(({ findings }) => findings())
					.then(({ closeFinding }) => closeFinding(DEVICE, openEngine().ask, began))
					.catch(() => undefined);
		},
	};
}
