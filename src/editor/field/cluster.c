#include "editor/field/cluster.h"
#include "base/utf8.h"

#include <wchar.h>
#include <wctype.h>

enum {
	MARKS = 0x300, /* no character before this one is a mark */
	ZERO_WIDTH_JOINER = 0x200D,
	PICTURES = 0x2190, /* from here on a joiner binds: arrows, signs, emoji */
	VARIATION_FIRST = 0xFE00, VARIATION_LAST = 0xFE0F,
	SKIN_FIRST = 0x1F3FB, SKIN_LAST = 0x1F3FF
};

static bool is_skin(uint32_t code)
{
	return code >= SKIN_FIRST && code <= SKIN_LAST;
}

bool cluster_is_bond(uint32_t code)
{
	return utf8_is_joiner(code) || is_skin(code) ||
		(code >= VARIATION_FIRST && code <= VARIATION_LAST);
}

/* Those with a width of their own too, such as most vowel signs of India. A C library that does not
 * know this class of characters steps over them one by one. */
static bool is_mark(uint32_t code)
{
	return wcwidth((wchar_t)code) == 0 || iswctype((wint_t)code, wctype("combining"));
}

/* Characters that no text holds have no part in a cluster, whatever width they are said to have. */
bool cluster_binds(uint32_t before, uint32_t code)
{
	if (code < MARKS || (!utf8_is_text(before) && !utf8_is_joiner(before)))
		return false;
	if (utf8_is_joiner(code) || is_skin(code))
		return true;
	if (before == ZERO_WIDTH_JOINER && code >= PICTURES)
		return true;
	return utf8_is_text(code) && is_mark(code);
}
