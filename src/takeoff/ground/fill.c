#include "takeoff/ground/fill.h"

#include <string.h>

/* Where no path gives one; common practice, no published source. */
#define SURFACE_WITHOUT_PATHS (NM_PER_INCH * 3 / 2)
/* A tenth of the wall's height should stand below ground: segmental wall association, technical note
 * 15-5, on small walls. */
#define EMBED_SHARE 10
/* Dry-laid walls over this ask for the maker's or an engineer's word: common practice, no published
 * source. */
#define HEIGHT_OF_CARE (24 * NM_PER_INCH)
/* Walls up to this, from the footing's bottom, need no permit: IRC R105.2. */
#define HEIGHT_OF_PERMIT (4 * NM_PER_FOOT)

static const char TOPSOIL[] = "topsoil";

struct fills {
	struct takeoff *takeoff;
	struct arena *arena;
	const struct plot *plot;
	struct snag_list *snags;
	struct fill *rows;
	size_t count, capacity;
};

nm fill_wall_height(const struct block *bed)
{
	return block_number(bed, BED_COURSES) * block_effective(bed, BED_BLOCK)->as.size.up;
}

nm fill_surface(const struct takeoff *takeoff)
{
	nm deepest = -1;

	for (int i = 0; i < takeoff->area_count; i++) {
		const struct area_row *area = &takeoff->areas[i];

		if (area->cells > 0 && area->entry && area->entry->class == CLASS_PATH) {
			nm surface = block_length(&area->entry->block, PATH_SURFACE);

			deepest = surface > deepest ? surface : deepest;
		}
	}
	return deepest < 0 ? SURFACE_WITHOUT_PATHS : deepest;
}

nm fill_embed(const struct takeoff *takeoff, const struct block *bed)
{
	const struct value *own = block_value(bed, BED_EMBED);

	return own->set ? own->as.length : fill_surface(takeoff);
}

bool fill_is_topsoil(const struct fill_part *part)
{
	return strcmp(part->name, TOPSOIL) == 0;
}

double fill_reused(const struct takeoff *takeoff, const struct fill_part *part)
{
	return fill_is_topsoil(part) ? part->volume * takeoff->earthwork.reused_share : 0;
}

static double volume(double area, nm depth)
{
	return area * (double)depth / (double)NM_PER_M;
}

static double with_settlement(const struct takeoff *takeoff, double soil)
{
	double percent = (double)block_number(takeoff->allow, ALLOW_SETTLEMENT) / (double)MILLION;

	return soil * (1 + percent / 100);
}

static const char *length_words(const struct fills *fills, nm length)
{
	return snag_length(fills->arena, fills->plot, length);
}

/* ---- Rows ------------------------------------------------------------------------------------- */

static struct fill *row_add(struct fills *fills, int region)
{
	struct fill *row;

	fills->rows = arena_grow(fills->arena, fills->rows, fills->count, &fills->capacity,
		sizeof *fills->rows);
	row = &fills->rows[fills->count++];
	*row = (struct fill){ .region = region };
	return row;
}

/* Shares row->order among the parts of the mix, or among all but topsoil. */
static void order_share(struct fill *row, const struct mix *mix, bool leave_topsoil)
{
	int64_t shares = 0;

	for (int i = 0; i < mix->count; i++) {
		const struct mix_part *part = &mix->parts[i];

		if (leave_topsoil && strcmp(part->name, TOPSOIL) == 0)
			continue;
		row->parts[row->part_count++] = (struct fill_part){ part->name,
			(double)part->thousandths };
		shares += part->thousandths;
	}
	for (int i = 0; i < row->part_count; i++)
		row->parts[i].volume *= row->order / (double)shares;
}

static void mulch_fill(struct fill *row, const struct block *bed, double area)
{
	row->mulch_depth = block_length(bed, BED_MULCH);
	row->mulch = volume(area, row->mulch_depth);
}

static void refill(struct fills *fills, struct fill *row, const struct block *bed, double area)
{
	row->soil = volume(area, row->soil_depth);
	row->order = with_settlement(fills->takeoff, row->soil);
	order_share(row, block_effective(bed, BED_MIX)->as.mix, false);
}

/* From the wall's top down: freeboard, mulch, soil; undug ground begins where the wall's embed does. */
static nm raised_depth(const struct takeoff *takeoff, const struct block *bed)
{
	nm depth = fill_wall_height(bed) - block_length(bed, BED_FREEBOARD) -
		block_length(bed, BED_MULCH);

	if (block_number(bed, BED_INSIDE) == INSIDE_UNDUG)
		depth -= fill_embed(takeoff, bed);
	return depth;
}

static void raised_snag(const struct fills *fills, int region, const struct block *bed)
{
	bool is_undug = block_number(bed, BED_INSIDE) == INSIDE_UNDUG;

	snag_add(fills->snags, SNAG_FILL_NONE, fills->takeoff, region, arena_print(fills->arena,
		"No soil fits: the wall is %s high, freeboard takes %s, mulch %s%s%s.",
		length_words(fills, fill_wall_height(bed)),
		length_words(fills, block_length(bed, BED_FREEBOARD)),
		length_words(fills, block_length(bed, BED_MULCH)),
		is_undug ? " and the ground inside " : "",
		is_undug ? length_words(fills, fill_embed(fills->takeoff, bed)) : ""));
}

static void raised_fill(struct fills *fills, int region, const struct block *bed)
{
	const struct wall *wall = takeoff_wall(fills->takeoff, region);
	nm depth = raised_depth(fills->takeoff, bed);

	if (depth <= 0)
		raised_snag(fills, region, bed);
	if (depth <= 0 || !wall)
		return;
	struct fill *row = row_add(fills, region);

	row->soil_depth = depth;
	refill(fills, row, bed, wall->inner_area);
	mulch_fill(row, bed, wall->inner_area);
}

/* A ground-level bed has a row in any case: its mulch is laid whatever is dug in. */
static void level_fill(struct fills *fills, int region, const struct block *bed)
{
	const struct region *at = &fills->takeoff->survey.regions[region];
	double area = survey_area(at->cells, fills->takeoff->survey.cell);
	bool is_replaced = block_number(bed, BED_REPLACE) == CHOICE_YES;
	struct fill *row = row_add(fills, region);

	row->soil_depth = block_length(bed, is_replaced ? BED_PREPARE : BED_AMEND);
	if (is_replaced) {
		refill(fills, row, bed, area);
	} else {
		row->order = row->soil = volume(area, row->soil_depth);
		order_share(row, block_effective(bed, BED_MIX)->as.mix, true);
	}
	mulch_fill(row, bed, area);
	if (row->part_count == 0)
		row->order = row->soil = 0;
	if (row->order > 0)
		return;
	snag_add(fills->snags, SNAG_FILL_NONE, fills->takeoff, region, row->part_count == 0 ?
		"Nothing is dug in: the mix has no part but topsoil, which is there already." :
		is_replaced ? "No soil is replaced: the depth dug over is 0." :
		"Nothing is dug in: the depth of the amendment is 0.");
}

/* ---- Walls' heights ---------------------------------------------------------------------------- */

static void embed_check(const struct fills *fills, int region, const struct block *bed)
{
	nm embed = fill_embed(fills->takeoff, bed), height = fill_wall_height(bed);

	if (embed * EMBED_SHARE >= height)
		return;
	snag_add(fills->snags, SNAG_WALL_EMBED, fills->takeoff, region, arena_print(fills->arena,
		"Only %s of the wall's %s stands below ground; a tenth of it is %s.",
		length_words(fills, embed), length_words(fills, height),
		length_words(fills, height / EMBED_SHARE)));
}

static void height_check(const struct fills *fills, int region, const struct block *bed)
{
	nm height = fill_wall_height(bed);
	nm from_footing = height + block_length(bed, BED_BASE) +
		block_effective(bed, BED_CAP)->as.size.up;
	const char *care = "", *permit = "";

	if (height > HEIGHT_OF_CARE)
		care = arena_print(fills->arena, "The wall is %s high, over %s: ask the block's maker "
			"or an engineer.", length_words(fills, height),
			length_words(fills, HEIGHT_OF_CARE));
	if (from_footing > HEIGHT_OF_PERMIT)
		permit = arena_print(fills->arena, "From the bottom of its base it is %s, over %s: "
			"ask for a permit (IRC R105.2; local code may be stricter).",
			length_words(fills, from_footing), length_words(fills, HEIGHT_OF_PERMIT));
	if (*care || *permit)
		snag_add(fills->snags, SNAG_WALL_HIGH, fills->takeoff, region, arena_print(fills->arena,
			"%s%s%s", care, *care && *permit ? " " : "", permit));
}

void fill_compute(struct takeoff *takeoff, struct arena *arena, const struct plot *plot,
	struct snag_list *snags)
{
	struct fills fills = { .takeoff = takeoff, .arena = arena, .plot = plot, .snags = snags };

	for (int i = 0; i < takeoff->survey.region_count; i++) {
		const struct region *region = &takeoff->survey.regions[i];
		const struct block *bed = &region->entry->block;

		if (region->entry->class != CLASS_BED)
			continue;
		if (takeoff_is_raised(region)) {
			raised_fill(&fills, i, bed);
			embed_check(&fills, i, bed);
			height_check(&fills, i, bed);
		} else {
			level_fill(&fills, i, bed);
		}
	}
	takeoff->fills = fills.rows;
	takeoff->fill_count = (int)fills.count;
}
