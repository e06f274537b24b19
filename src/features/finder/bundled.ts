import { InputError } from '../../../shared/error/index.ts';
import { loadRig, RIG_IDS, type RigId, type RigSheet } from '../../../shared/sheet/index.ts';

/** A bundled rig, fetched where it is not there yet. @throws InputError `sheet.bundled`, NotFetched */
export async function readBundled(rig: string): Promise<RigSheet> {
	if (!RIG_IDS.includes(rig as RigId)) throw new InputError('sheet.bundled', 'id', { trouble: 'no-such-rig', id: rig });
	return loadRig(rig as RigId);
}
