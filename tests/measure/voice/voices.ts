/** Who speaks: Debian's free synthesisers. A voice is named by its package. */
export type Voice = {
  name: string;
  from: "flite" | "festival" | "espeak-ng";
  /** What the program calls it. */
  called: string;
  /** Whether the ear ever met it while it was trained (src/speech/ear/recipe/voices.py). */
  trainedOn: boolean;
};

/** All free English voices of festival in Debian 12 main, and flite's rms, were never trained on. */
export const HELD_OUT: readonly Voice[] = [
  { name: "flite rms", from: "flite", called: "rms", trainedOn: false },
  { name: "festival kal", from: "festival", called: "voice_kal_diphone", trainedOn: false },
  { name: "festival ked", from: "festival", called: "voice_ked_diphone", trainedOn: false },
  { name: "festival slt-hts", from: "festival", called: "voice_cmu_us_slt_arctic_hts", trainedOn: false },
];

export const TRAINED_ON: readonly Voice[] = [
  { name: "flite kal16", from: "flite", called: "kal16", trainedOn: true },
  { name: "flite slt", from: "flite", called: "slt", trainedOn: true },
  { name: "flite awb", from: "flite", called: "awb", trainedOn: true },
  { name: "espeak-ng us", from: "espeak-ng", called: "en-us", trainedOn: true },
  { name: "espeak-ng gb", from: "espeak-ng", called: "en-gb", trainedOn: true },
  { name: "espeak-ng scotland", from: "espeak-ng", called: "en-gb-scotland+f2", trainedOn: true },
];

export const PACKAGES: readonly { package: string; there: string }[] = [
  { package: "flite", there: "/usr/bin/flite" },
  { package: "espeak-ng", there: "/usr/bin/espeak-ng" },
  { package: "festival", there: "/usr/bin/festival" },
  { package: "festvox-kallpc16k", there: "/usr/share/festival/voices/english/kal_diphone" },
  { package: "festvox-kdlpc16k", there: "/usr/share/festival/voices/english/ked_diphone" },
  { package: "festvox-us-slt-hts", there: "/usr/share/festival/voices/us/cmu_us_slt_arctic_hts" },
];

/** How one utterance is spoken: pace and pitch of its speaker. */
export type Manner = {
  /** Length of each sound, 1 = as the voice was made, above it slower. */
  stretch: number;
  /** Played faster or slower, which moves the throat with the pace: another, smaller or larger, speaker. */
  size: number;
};
