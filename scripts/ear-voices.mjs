// Plain Node, no packages. Speech for measuring and testing the ear: Debian's own voices.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** @param {string} program */
function there(program) {
  return spawnSync('which', [program], { stdio: 'ignore' }).status === 0;
}

/**
 * Whether a program is there, installed if that is allowed here.
 * @param {string} program
 * @param {readonly string[]} packages Debian's
 * @returns {boolean}
 */
export function ensureProgram(program, packages) {
  if (there(program)) return true;
  if (process.getuid?.() !== 0 || !there('apt-get')) return false;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  spawnSync('apt-get', ['update'], { stdio: 'ignore', env });
  spawnSync('apt-get', ['install', '-y', '--no-install-recommends', ...packages], {
    stdio: 'ignore',
    env,
  });
  return there(program);
}

/**
 * @typedef {{ samples: Float32Array, rate: number }} Sound samples -1 to 1, and how many a second
 */

/**
 * The sound of a 16-bit WAV file, its first channel.
 * @param {string} path
 * @returns {Sound}
 */
export function readWav(path) {
  const file = readFileSync(path);
  let rate = 0;
  let channels = 1;
  for (let at = 12; at + 8 <= file.length; ) {
    const name = file.toString('latin1', at, at + 4);
    const length = file.readUInt32LE(at + 4);
    if (name === 'fmt ') {
      if (file.readUInt16LE(at + 8) !== 1 || file.readUInt16LE(at + 22) !== 16) break;
      channels = file.readUInt16LE(at + 10);
      rate = file.readUInt32LE(at + 12);
    }
    if (name === 'data' && rate > 0) {
      const count = Math.floor(Math.min(length, file.length - at - 8) / 2 / channels);
      const samples = Float32Array.from(
        { length: count },
        (_, i) => file.readInt16LE(at + 8 + i * 2 * channels) / 32768,
      );
      return { samples, rate };
    }
    at += 8 + length + (length % 2);
  }
  throw new Error(`${path} is not a WAV file of 16-bit samples`);
}

/**
 * A WAV file's bytes.
 * @param {Sound} sound
 */
export function wavBytes({ samples, rate }) {
  const file = Buffer.alloc(44 + samples.length * 2);
  file.write('RIFF', 0, 'latin1');
  file.writeUInt32LE(36 + samples.length * 2, 4);
  file.write('WAVEfmt ', 8, 'latin1');
  file.writeUInt32LE(16, 16);
  file.writeUInt16LE(1, 20);
  file.writeUInt16LE(1, 22);
  file.writeUInt32LE(rate, 24);
  file.writeUInt32LE(rate * 2, 28);
  file.writeUInt16LE(2, 32);
  file.writeUInt16LE(16, 34);
  file.write('data', 36, 'latin1');
  file.writeUInt32LE(samples.length * 2, 40);
  for (const [i, sample] of samples.entries()) {
    file.writeInt16LE(Math.round(Math.max(-1, Math.min(1, sample)) * 32767), 44 + i * 2);
  }
  return file;
}

/**
 * What flite makes of a text with one of its voices.
 * @param {string} text
 * @param {string} voice slt, rms, awb, kal16 or kal
 * @returns {Sound}
 */
export function fliteSays(text, voice) {
  const folder = mkdtempSync(join(tmpdir(), 'turncaller-voice-'));
  const path = join(folder, 'said.wav');
  try {
    const said = spawnSync('flite', ['-voice', voice, '-t', text, '-o', path]);
    if (said.status !== 0) throw new Error(`flite said nothing: ${said.stderr}`);
    return readWav(path);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * What festival makes of a text with one of its voices; null where it or the voice is not here.
 * @param {string} text
 * @param {string} voice
 * @returns {Sound | null}
 */
export function festivalSays(text, voice) {
  const folder = mkdtempSync(join(tmpdir(), 'turncaller-voice-'));
  const path = join(folder, 'said.wav');
  try {
    spawnSync('text2wave', ['-eval', `(voice_${voice})`, '-o', path], { input: text });
    return readWav(path);
  } catch {
    return null;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
