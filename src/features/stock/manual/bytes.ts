import { ManualTrouble, MOST_BYTES } from './pdf.ts';

/** A picked file's bytes. @throws ManualTrouble `too-large`; `unreadable` where the device doesn't hand it over, such as one that stays in a cloud */
export async function bytesOf(file: Blob): Promise<Uint8Array> {
	if (file.size > MOST_BYTES) throw new ManualTrouble('too-large');
	try {
		return new Uint8Array(await file.arrayBuffer());
	} catch {
		throw new ManualTrouble('unreadable');
	}
}
