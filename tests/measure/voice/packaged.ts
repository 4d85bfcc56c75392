import { join } from "node:path";
import { fileURLToPath } from "node:url";
import createModule, { type Decoder, type SoundSwallowerModule } from "soundswallower";
import { readNumber } from "#speech/numbers.ts";
import type { Asked } from "./texts.ts";

const SMALL = `<d> = one | two | three | four | five | six | seven | eight | nine;
<z> = zero | <d>;
<teen> = ten | eleven | twelve | thirteen | fourteen | fifteen | sixteen | seventeen | eighteen | nineteen;
<ten> = twenty | thirty | forty | fifty | sixty | seventy | eighty | ninety;
<two> = <teen> | <ten> [<d>];
<under> = <z> | <two>;
<whole> = <under> | <d> hundred [[and] (<d> | <two>)] | <d> <two> | <d> <z> | <d> <z> <z>;`;

/** The same forms that our own ear is offered for the question. */
const GRAMMARS: Partial<Record<Asked, string>> = {
  "mg/dL": "<whole>",
  "mmol/L": "<under> [point <z>]",
  units: "<under> [and a half] [unit | units]",
  grams: "<whole> [gram | grams]",
};

/** `_decoder_hyp` is not in the package's types; text must not be asked for when it gives 0. */
type Raw = SoundSwallowerModule & { _decoder_hyp(decoder: number, score: number): number; _malloc(bytes: number): number };
type Inside = Decoder & { cdecoder: number };

/** The best engine that ships in a package (soundswallower 0.6.3 with its own English model), alone: what it hears is taken as it is. */
export class Packaged {
  readonly #module: Raw;
  readonly #decoder: Inside;
  readonly #score: number;
  #grammar: string | null = null;

  private constructor(module: Raw, decoder: Inside) {
    this.#module = module;
    this.#decoder = decoder;
    this.#score = module._malloc(4);
  }

  static async open(): Promise<Packaged> {
    const where: Partial<Raw> & { modelBase: string } = {
      modelBase: join(fileURLToPath(import.meta.resolve("soundswallower")), "../model/"),
    };
    const module = (await createModule(where)) as Raw;
    // The default rate of the package is 44100.
    const decoder = new module.Decoder({ samprate: 16000, loglevel: "FATAL" }) as Inside;
    await decoder.initialize();
    return new Packaged(module, decoder);
  }

  /** The number's text, or null. The sound must have a noise floor: digital silence spoils this engine's hearing. */
  number(sound: Float32Array, asked: Asked): string | null {
    const grammar = GRAMMARS[asked];
    if (grammar === undefined) throw new Error(`No number is asked by "${asked}".`);
    const heard = readNumber(this.words(sound, grammar) ?? "");
    return heard.kind === "number" ? heard.text : null;
  }

  /** The words of the sound that fit a grammar best (JSGF, with `<under>` for every number under a hundred), or null. */
  words(sound: Float32Array, grammar: string): string | null {
    if (grammar !== this.#grammar) this.#decoder.set_grammar(`#JSGF V1.0; grammar g; ${SMALL} public <s> = ${grammar};`);
    this.#grammar = grammar;
    this.#decoder.start();
    this.#decoder.process_audio(sound, false, true);
    this.#decoder.stop();
    return this.#module._decoder_hyp(this.#decoder.cdecoder, this.#score) === 0 ? null : this.#decoder.get_text();
  }
}
