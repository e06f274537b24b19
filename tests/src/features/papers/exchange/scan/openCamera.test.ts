import { describe, expect, it } from 'vitest';
import { errors } from '#words/errors/index.ts';
import { isInputError } from '../../../../../../shared/error/index.ts';
import { closeCamera, openCamera } from '../../../../../../src/features/papers/exchange/scan/openCamera.ts';
import { errorText } from '../../../../../../src/wording/index.ts';

const giving = (getUserMedia: MediaDevices['getUserMedia']) => ({ getUserMedia });
const failing = (name: string) => giving(() => Promise.reject(new DOMException('no', name)));

async function troubleOf(devices: Parameters<typeof openCamera>[0], isSecure = true): Promise<string> {
	try {
		await openCamera(devices, isSecure);
	} catch (error) {
		if (isInputError(error)) return `${error.code} ${errorText(error)}`;
		throw error;
	}
	return 'none';
}

describe('the camera', () => {
	it('is the one on the back, with no sound, where there is one', async () => {
		const asked: MediaStreamConstraints[] = [];
		const stream = {} as MediaStream;
		const given = await openCamera(
			giving(async (wanted) => {
				asked.push(wanted ?? {});
				return stream;
			}),
			true,
		);
		expect(given).toBe(stream);
		expect(asked).toMatchObject([{ audio: false, video: { facingMode: { ideal: 'environment' } } }]);
	});

	it('is not asked for where it cannot be given: each with what to do instead', async () => {
		const never = giving(() => Promise.reject(new Error('asked')));
		expect(await troubleOf(never, false)).toBe(`camera.insecure ${errors['camera.insecure']}`);
		expect(await troubleOf(undefined)).toBe(`camera.unable ${errors['camera.unable']}`);
	});

	it.each([
		['NotAllowedError', 'refused'],
		['SecurityError', 'refused'],
		['NotFoundError', 'missing'],
		['OverconstrainedError', 'missing'],
		['NotReadableError', 'busy'],
		['AbortError', 'busy'],
		['TypeError', 'unable'],
	] as const)('%s is told as %s', async (name, trouble) => {
		expect(await troubleOf(failing(name))).toBe(`camera.${trouble} ${errors[`camera.${trouble}`]}`);
	});

	it('is let go track by track, and where there is none at once', () => {
		const stopped: number[] = [];
		const track = (n: number) => ({ stop: () => stopped.push(n) });
		closeCamera({ getTracks: () => [track(1), track(2)] } as unknown as MediaStream);
		closeCamera(null);
		expect(stopped).toEqual([1, 2]);
	});
});
