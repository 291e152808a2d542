#include "prices/ware.h"

#include <string.h>

/* The first that fits holds. */
static const struct ware wares[] = {
	{ .id = "block.wall", .unit = UNIT_EACH, .has_block = true },
	{ .id = "block.cap", .unit = UNIT_EACH, .has_block = true },
	{ .id = "adhesive.cartridge", .unit = UNIT_EACH },
	{ .id = "soil.compost", .unit = UNIT_M3, .density = ALLOW_DENSITY_COMPOST },
	{ .id = "soil.", .unit = UNIT_M3, .density = ALLOW_DENSITY_SOIL },
	{ .id = "mulch", .unit = UNIT_M3, .density = ALLOW_DENSITY_MULCH },
	{ .id = "fence.post", .unit = UNIT_EACH, .has_length = true },
	{ .id = "fence.panel", .unit = UNIT_EACH, .has_length = true },
	{ .id = "fence.gate", .unit = UNIT_EACH, .has_length = true },
	{ .id = "fence.concrete", .unit = UNIT_EACH },
	{ .id = "fence.gravel", .unit = UNIT_M3, .density = ALLOW_DENSITY_STONE },
	{ .id = "fence.bracket", .unit = UNIT_EACH },
	{ .id = "fence.hinge", .unit = UNIT_EACH },
	{ .id = "fence.latch", .unit = UNIT_EACH },
	{ .id = "fence.bolt", .unit = UNIT_EACH },
	{ .id = "spoil", .unit = UNIT_M3, .density = ALLOW_DENSITY_SPOIL },
	{ .id = "stone.base", .unit = UNIT_M3, .density = ALLOW_DENSITY_STONE },
	{ .id = "stone.surface.fines", .unit = UNIT_M3, .density = ALLOW_DENSITY_STONE },
	{ .id = "stone.surface.clean", .unit = UNIT_M3, .density = ALLOW_DENSITY_STONE },
	{ .id = "fabric.roll", .unit = UNIT_EACH },
	{ .id = "fabric.pin", .unit = UNIT_EACH },
	{ .id = "liner", .unit = UNIT_M2 },
	{ .id = "edging.piece", .unit = UNIT_EACH },
	{ .id = "edging.spike", .unit = UNIT_EACH },
	{ .id = "topsoil.lawn", .unit = UNIT_M3, .density = ALLOW_DENSITY_SOIL },
	{ .id = "turf", .unit = UNIT_M2 },
	{ .id = "seed", .unit = UNIT_KG },
};
enum { WARES = sizeof wares / sizeof *wares };

static bool stands_for_all(const struct ware *ware)
{
	return ware->id[strlen(ware->id) - 1] == '.';
}

/* A lower-case word, hyphens within. */
static bool is_name(const char *name)
{
	size_t length = strlen(name);

	return length > 0 && length == strspn(name, "abcdefghijklmnopqrstuvwxyz-") &&
		name[0] != '-' && name[length - 1] != '-' && !strstr(name, "--");
}

const struct ware *ware_find(const char *id)
{
	for (int i = 0; i < WARES; i++) {
		size_t length = strlen(wares[i].id);

		if (stands_for_all(&wares[i]) ? strncmp(id, wares[i].id, length) == 0 &&
			is_name(id + length) : strcmp(id, wares[i].id) == 0)
			return &wares[i];
	}
	return NULL;
}

void ware_list(struct text *out)
{
	for (int i = 0; i < WARES; i++) {
		struct text words = TEXT_EMPTY;

		text_print(&words, "%s%s", wares[i].id, stands_for_all(&wares[i]) ? "NAME" : "");
		text_add_listed(out, words.bytes, i + 1 == WARES);
		text_fini(&words);
	}
}
