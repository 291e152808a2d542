#include "screen/encode.h"
#include "base/text.h"
#include "screen/width.h"

#include <limits.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

char *encode_for_locale(const char *utf8)
{
	struct text out = TEXT_EMPTY;
	mbstate_t state = { 0 };

	for (size_t left = strlen(utf8); left;) {
		char bytes[MB_LEN_MAX];
		wchar_t shown;
		int columns;
		size_t used = width_character(utf8, left, &shown, &columns);

		text_add_bytes(&out, bytes, wcrtomb(bytes, shown, &state));
		utf8 += used;
		left -= used;
	}
	return text_take(&out);
}

static void add_utf8(struct text *out, uint32_t code)
{
	char bytes[4];
	size_t length = code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
	static const uint32_t leads[] = { 0, 0, 0xc0, 0xe0, 0xf0 };

	for (size_t i = length; i > 1; i--) {
		bytes[i - 1] = (char)(0x80 | (code & 0x3f));
		code >>= 6;
	}
	bytes[0] = (char)(leads[length] | code);
	text_add_bytes(out, bytes, length);
}

char *encode_from_locale(const char *local)
{
	struct text out = TEXT_EMPTY;
	mbstate_t state = { 0 };

	for (size_t left = strlen(local); left;) {
		wchar_t character;
		size_t used = mbrtowc(&character, local, left, &state);

		if (used == (size_t)-1 || used == (size_t)-2) {
			memset(&state, 0, sizeof state);
			used = 1;
		} else {
			add_utf8(&out, (uint32_t)character);
		}
		local += used;
		left -= used;
	}
	return text_take(&out);
}
