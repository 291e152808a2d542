#include "screen/encode.h"
#include "base/memory.h"
#include "base/utf8.h"

#include <limits.h>
#include <stdlib.h>
#include <string.h>
#include <wchar.h>

bool encode_can_show(const char *utf8)
{
	char bytes[MB_LEN_MAX];
	uint32_t code;

	for (size_t left = strlen(utf8), taken; left; utf8 += taken, left -= taken) {
		mbstate_t state = { 0 };

		taken = utf8_decode(utf8, left, &code);
		if (!taken || wcrtomb(bytes, (wchar_t)code, &state) == (size_t)-1)
			return false;
	}
	return true;
}

uint32_t *encode_read(const char *local, size_t length, size_t *count)
{
	uint32_t *codes = memory_new(length + 1, sizeof *codes);
	mbstate_t state = { 0 };
	size_t used;

	*count = 0;
	for (size_t at = 0; at < length; at += used ? used : 1) {
		wchar_t character;

		used = mbrtowc(&character, local + at, length - at, &state);
		if (used == (size_t)-1 || used == (size_t)-2) {
			free(codes);
			*count = 0;
			return NULL;
		}
		codes[(*count)++] = (uint32_t)character;
	}
	return codes;
}
