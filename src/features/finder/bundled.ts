import { InputError } from '../../../shared/error/index.ts';
import { bundledRig, RIG_IDS, type RigId, type RigSheet } from '../../../shared/sheet/index.ts';

/** @throws InputError `sheet.bundled` */
export function readBundled(rig: string): RigSheet {
	if (!RIG_IDS.includes(rig as RigId)) throw new InputError('sheet.bundled', 'id', { trouble: 'no-such-rig', id: rig });
	return bundledRig(rig as RigId);
}
