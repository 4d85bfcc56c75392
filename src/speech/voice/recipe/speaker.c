/* The four doors through which the app uses the synthesiser. One voice is linked in; nothing else of the outside world is needed. */
#include "cst_audio.h"
#include "flite.h"

cst_voice *VOICE(const char *voxdir);

static cst_voice *voice;
static cst_wave *wave;
static char text[2048];

#define DOOR(name) __attribute__((export_name(#name)))

DOOR(text_at) char *text_at(void) { return text; }
DOOR(text_room) int text_room(void) { return (int)sizeof text; }
DOOR(samples_at) short *samples_at(void) { return wave ? wave->samples : 0; }
DOOR(sample_rate) int sample_rate(void) { return wave ? wave->sample_rate : 0; }

DOOR(start) int start(void) {
  flite_init();
  voice = VOICE(0);
  return voice != 0;
}

/* stretch 1 is the voice's own pace, 2 half as fast. Gives the number of 16-bit samples, or -1. */
DOOR(say) int say(float stretch) {
  if (!voice) return -1;
  if (wave) delete_wave(wave);
  text[sizeof text - 1] = 0;
  feat_set_float(voice->features, "duration_stretch", stretch);
  wave = flite_text_to_wave(text, voice);
  return wave && wave->num_channels == 1 ? wave->num_samples : -1;
}

/* Streaming belongs to the sound card code, which is left out: nothing asks for it. */
void val_delete_audio_streaming_info(void *v) { (void)v; }
cst_audio_streaming_info *val_audio_streaming_info(const cst_val *v) {
  (void)v;
  return 0;
}
