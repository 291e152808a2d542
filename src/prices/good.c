#include "prices/good.h"

#include <string.h>

#define GOOD_ROW(good, id, label, unit, varies, density) \
	[good] = { id, label, unit, varies, density },
static const struct good_row rows[] = { GOODS_TABLE(GOOD_ROW) };
#undef GOOD_ROW

const struct good_row *good_row(enum good good)
{
	return &rows[good];
}

/* Lower-case letters, with single hyphens between them. */
static bool is_name(const char *name)
{
	size_t length = strlen(name);

	return length > 0 && length == strspn(name, "abcdefghijklmnopqrstuvwxyz-") &&
		name[0] != '-' && name[length - 1] != '-' && !strstr(name, "--");
}

bool good_find(const char *id, enum good *good, const char **name)
{
	for (int i = 0; i < GOODS; i++) {
		size_t length = strlen(rows[i].id);
		bool is_named = rows[i].varies == VARIES_BY_NAME;

		if (is_named ? strncmp(id, rows[i].id, length) != 0 || !is_name(id + length) :
			strcmp(id, rows[i].id) != 0)
			continue;
		*good = (enum good)i;
		*name = id + length;
		return true;
	}
	return false;
}

static bool is_mineral(const char *part)
{
	static const char *const minerals[] = { "sand", "grit", "gravel" };
	const char *hyphen = strrchr(part, '-'), *last = hyphen ? hyphen + 1 : part;

	for (size_t i = 0; i < sizeof minerals / sizeof *minerals; i++)
		if (strcmp(last, minerals[i]) == 0)
			return true;
	return false;
}

enum attribute good_density(enum good good, const char *name)
{
	return good == GOOD_SOIL && is_mineral(name) ? ALLOW_DENSITY_STONE : rows[good].density;
}

enum good good_of_soil(const char *part)
{
	return strcmp(part, "compost") == 0 ? GOOD_COMPOST : GOOD_SOIL;
}

void good_add_id(struct text *out, enum good good, const char *name)
{
	text_add(out, rows[good].id);
	if (rows[good].varies == VARIES_BY_NAME)
		text_add(out, name);
}

void good_list(struct text *out)
{
	for (int i = 0; i < GOODS; i++) {
		struct text id = TEXT_EMPTY;

		good_add_id(&id, (enum good)i, "NAME");
		text_add_listed(out, id.bytes, i + 1 == GOODS);
		text_fini(&id);
	}
}

const char *item_unit_word(enum item_unit unit)
{
	static const char *const words[] = {
		[UNIT_EACH] = "each", [UNIT_M] = "m", [UNIT_M2] = "m2", [UNIT_M3] = "m3",
		[UNIT_KG] = "kg",
	};

	return words[unit];
}
