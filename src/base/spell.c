#include "base/spell.h"
#include "base/utf8.h"

#include <langinfo.h>
#include <stdio.h>
#include <string.h>

static size_t spell_bytes(const char *bytes, size_t count, char out[SPELLED_MOST + 1])
{
	for (size_t i = 0; i < count; i++)
		snprintf(out + 4 * i, 5, "<%02X>", (unsigned)(unsigned char)bytes[i]);
	return 4 * count;
}

size_t spell_character(const char *bytes, size_t left, char out[SPELLED_MOST + 1], size_t *length)
{
	uint32_t code = 0;
	size_t taken = utf8_decode(bytes, left, &code);

	if (taken && utf8_is_text(code)) {
		memcpy(out, bytes, taken);
		*length = taken;
	} else {
		taken = taken ? taken : 1;
		*length = spell_bytes(bytes, taken, out);
	}
	return taken;
}

static void spell_all(struct text *out, const char *bytes, bool is_ascii)
{
	for (size_t left = strlen(bytes), taken; left; left -= taken) {
		char spelled[SPELLED_MOST + 1];
		size_t length;

		taken = spell_character(bytes, left, spelled, &length);
		if (is_ascii && (unsigned char)spelled[0] >= 0x80)
			length = spell_bytes(bytes, taken, spelled);
		text_add_bytes(out, spelled, length);
		bytes += taken;
	}
}

void spell(struct text *out, const char *bytes)
{
	spell_all(out, bytes, false);
}

void spell_for_locale(struct text *out, const char *bytes)
{
	spell_all(out, bytes, strcmp(nl_langinfo(CODESET), "UTF-8") != 0);
}
