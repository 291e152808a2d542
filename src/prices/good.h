/* The goods, once: what a takeoff may list and a price book may have prices for.
 *
 * A row of GOODS_TABLE: identity; id (one that ends in a dot is followed by a name:
 * "soil.topsoil"); label (NULL: the name); unit it is counted in; what its rows in a takeoff
 * differ by; the attribute of allow with its weight per cubic metre. Goods of the plot's own have
 * name and unit from there. */
#ifndef PRICES_GOOD_H
#define PRICES_GOOD_H

#include "base/text.h"
#include "plot/attribute.h"

#define GOODS_TABLE(X) \
	X(GOOD_BLOCK_WALL, "block.wall", "Wall block", UNIT_EACH, VARIES_BY_BLOCK, NO_DENSITY) \
	X(GOOD_BLOCK_CAP, "block.cap", "Cap block", UNIT_EACH, VARIES_BY_BLOCK, NO_DENSITY) \
	X(GOOD_ADHESIVE, "adhesive.cartridge", "Adhesive, cartridge", UNIT_EACH, VARIES_NOT, \
		NO_DENSITY) \
	X(GOOD_COMPOST, "soil.compost", "Compost", UNIT_M3, VARIES_NOT, ALLOW_DENSITY_COMPOST) \
	X(GOOD_SOIL, "soil.", NULL, UNIT_M3, VARIES_BY_NAME, ALLOW_DENSITY_SOIL) \
	X(GOOD_MULCH, "mulch", "Mulch", UNIT_M3, VARIES_NOT, ALLOW_DENSITY_MULCH) \
	X(GOOD_FENCE_POST, "fence.post", "Fence post", UNIT_EACH, VARIES_BY_POST, NO_DENSITY) \
	X(GOOD_FENCE_PANEL, "fence.panel", "Fence panel", UNIT_EACH, VARIES_BY_PANEL, NO_DENSITY) \
	X(GOOD_FENCE_GATE, "fence.gate", "Gate leaf", UNIT_EACH, VARIES_BY_PANEL, NO_DENSITY) \
	X(GOOD_FENCE_CONCRETE, "fence.concrete", "Concrete, bags", UNIT_EACH, VARIES_NOT, \
		NO_DENSITY) \
	X(GOOD_FENCE_GRAVEL, "fence.gravel", "Gravel under posts", UNIT_M3, VARIES_NOT, \
		ALLOW_DENSITY_STONE) \
	X(GOOD_FENCE_BRACKET, "fence.bracket", "Rail bracket", UNIT_EACH, VARIES_NOT, NO_DENSITY) \
	X(GOOD_FENCE_HINGE, "fence.hinge", "Gate hinge", UNIT_EACH, VARIES_NOT, NO_DENSITY) \
	X(GOOD_FENCE_LATCH, "fence.latch", "Gate latch", UNIT_EACH, VARIES_NOT, NO_DENSITY) \
	X(GOOD_FENCE_BOLT, "fence.bolt", "Drop bolt", UNIT_EACH, VARIES_NOT, NO_DENSITY) \
	X(GOOD_SPOIL, "spoil", "Spoil", UNIT_M3, VARIES_NOT, ALLOW_DENSITY_SPOIL) \
	X(GOOD_FILL, "fill", "Earth for low ground", UNIT_M3, VARIES_NOT, ALLOW_DENSITY_SOIL) \
	X(GOOD_STONE_BASE, "stone.base", "Base stone", UNIT_M3, VARIES_NOT, ALLOW_DENSITY_STONE) \
	X(GOOD_STONE_FINES, "stone.surface.fines", "Stone with fines", UNIT_M3, VARIES_NOT, \
		ALLOW_DENSITY_STONE) \
	X(GOOD_STONE_CLEAN, "stone.surface.clean", "Clean stone", UNIT_M3, VARIES_NOT, \
		ALLOW_DENSITY_STONE) \
	X(GOOD_FABRIC, "fabric.roll", "Fabric, roll", UNIT_EACH, VARIES_NOT, NO_DENSITY) \
	X(GOOD_FABRIC_PIN, "fabric.pin", "Fabric pin", UNIT_EACH, VARIES_NOT, NO_DENSITY) \
	X(GOOD_LINER, "liner", "Filter fabric, liner", UNIT_M2, VARIES_NOT, NO_DENSITY) \
	X(GOOD_EDGING, "edging.piece", "Edging, piece", UNIT_EACH, VARIES_NOT, NO_DENSITY) \
	X(GOOD_EDGING_SPIKE, "edging.spike", "Edging spike", UNIT_EACH, VARIES_NOT, NO_DENSITY) \
	X(GOOD_SLEEVE, "sleeve", "Pipe sleeve", UNIT_M, VARIES_NOT, NO_DENSITY) \
	X(GOOD_LAWN_TOPSOIL, "topsoil.lawn", "Lawn topsoil", UNIT_M3, VARIES_NOT, \
		ALLOW_DENSITY_SOIL) \
	X(GOOD_TURF, "turf", "Turf", UNIT_M2, VARIES_NOT, NO_DENSITY) \
	X(GOOD_SEED, "seed", "Grass seed", UNIT_KG, VARIES_NOT, NO_DENSITY) \
	X(GOOD_PLANT, "plant", NULL, UNIT_EACH, VARIES_BY_TITLE, NO_DENSITY) \
	X(GOOD_EXTRA, "extra", NULL, UNIT_EACH, VARIES_BY_TITLE, NO_DENSITY)

#define GOOD_IDENTITY(good, id, label, unit, varies, density) good,
enum good { GOODS_TABLE(GOOD_IDENTITY) GOODS };
#undef GOOD_IDENTITY

enum item_unit { UNIT_EACH, UNIT_M, UNIT_M2, UNIT_M3, UNIT_KG };
/* Posts differ by length and thickness, panels and leaves by length and height, a part of a mix
 * by the name in its id, goods of the plot's own by the name they have there. */
enum good_varies {
	VARIES_NOT, VARIES_BY_BLOCK, VARIES_BY_POST, VARIES_BY_PANEL, VARIES_BY_NAME,
	VARIES_BY_TITLE
};
#define NO_DENSITY ((enum attribute)ATTRIBUTES)

struct good_row {
	const char *id, *label;
	enum item_unit unit;
	enum good_varies varies;
	enum attribute density; /* NO_DENSITY: never weighed by volume; see good_density */
};

const struct good_row *good_row(enum good good);
/* The good with the id; *name points into the id, to what follows the dot of a named one, else
 * to the end: "". False where no good has it. */
bool good_find(const char *id, enum good *good, const char **name);
/* The attribute of allow that one weighs it by; name as from good_find. That of its row, but for
 * what is named sand, grit or gravel, or ends so ("sharp-sand"), in a soil mix that of stone. */
enum attribute good_density(enum good good, const char *name);
/* The good that a part of a soil mix is bought as. */
enum good good_of_soil(const char *part);
/* Adds the id; name as from good_find. */
void good_add_id(struct text *out, enum good good, const char *name);
/* Adds all ids for a message: "block.wall, soil.NAME or mulch". */
void good_list(struct text *out);
/* "each", "m", "m2", "m3", "kg". */
const char *item_unit_word(enum item_unit unit);

#endif
