#include "takeoff/walls/build.h"
#include "base/measure.h"

static const struct size *bed_size(const struct block *bed, enum attribute a)
{
	return &block_effective(bed, a)->as.size;
}

double wall_volume(nm length, const struct size *block)
{
	return area_of(length, block->across) * metres(block->up);
}

double wall_density(const struct block *bed)
{
	return block_amount(bed, BED_DENSITY);
}

struct masonry wall_masonry(const struct block *allow, const struct block *bed)
{
	const struct size *block = bed_size(bed, BED_BLOCK);

	return (struct masonry){ .length = block->along, .depth = block->across,
		.shortest = bond_shortest(block->along, block_length(allow, ALLOW_SHORTEST)),
		.courses = (int)block_number(bed, BED_COURSES) };
}

/* No piece of a cap is under half of one. */
static struct masonry cap_masonry(const struct block *bed)
{
	const struct size *cap = bed_size(bed, BED_CAP);

	return (struct masonry){ .length = cap->along, .depth = cap->across,
		.shortest = cap->along / 2, .courses = 1 };
}

/* ---- Laying ---------------------------------------------------------------------------------- */

static struct ring_plan plan_of(const struct site *site, struct arena *arena,
	const struct symmetry *symmetry)
{
	return (struct ring_plan){ .arena = arena, .book = site->job->book,
		.outline = site->room.outline, .cell = site->room.survey->cell,
		.masonry = wall_masonry(site->job->basis->allow, site->bed),
		.symmetry = symmetry };
}

/* False where the symmetry, unless NULL, cannot be had. */
static bool lay_both(struct build *build, const struct site *site, struct arena *arena,
	const struct symmetry *symmetry)
{
	struct ring_plan plan = plan_of(site, arena, symmetry);

	build->turns = symmetry ? symmetry->turns : 1U << TURN_NONE;
	if (!ring_lay(&build->wall, &plan))
		return false;
	if (!build->has_cap)
		return true;
	plan.wall = &build->wall;
	plan.wall_masonry = plan.masonry;
	plan.masonry = cap_masonry(site->bed);
	return ring_lay(&build->cap, &plan);
}

/* The first symmetry that costs no more than none; NULL where each does. */
static const struct symmetry *choose_symmetry(const struct site *site, bool has_cap,
	const struct symmetry *list, int count)
{
	struct arena unused = ARENA_EMPTY;
	struct build free_one = { .has_cap = has_cap }, own = { .has_cap = has_cap };
	const struct symmetry *chosen = NULL;

	lay_both(&free_one, site, &unused, NULL);
	for (int i = 0; i < count && !chosen; i++)
		if (lay_both(&own, site, &unused, &list[i]) && own.wall.cost + own.cap.cost <=
			free_one.wall.cost + free_one.cap.cost)
			chosen = &list[i];
	arena_clear(&unused);
	return chosen;
}

static bool takes_cap(const struct site *site)
{
	struct masonry cap = cap_masonry(site->bed);

	if (size_is_none(bed_size(site->bed, BED_CAP)))
		return false;
	if (site_takes_cap(site, &cap))
		return true;
	site->job->walls->caps_not_laid++;
	return false;
}

/* What a builder sees of both. */
static void check(const struct site *site, const struct build *build)
{
	struct masonry wall = wall_masonry(site->job->basis->allow, site->bed);
	struct masonry cap = cap_masonry(site->bed);

	site_check_ring(site, &build->wall, &wall, false);
	if (build->has_cap)
		site_check_ring(site, &build->cap, &cap, true);
}

void build_lay(struct build *out, const struct site *site)
{
	struct symmetry list[SYMMETRIES_MOST];
	struct arena images = ARENA_EMPTY;
	int count = symmetry_list(list, &images, site->room.outline);
	const struct symmetry *symmetry = NULL;

	*out = (struct build){ .has_cap = takes_cap(site) };
	if (count > 0)
		symmetry = choose_symmetry(site, out->has_cap, list, count);
	lay_both(out, site, site->job->basis->arena, symmetry);
	check(site, out);
	arena_clear(&images);
}

void build_image(struct build *out, const struct site *site, const struct build *build,
	const struct outline *from, const struct image *image)
{
	struct ring_plan plan = plan_of(site, site->job->basis->arena, NULL);

	*out = (struct build){ .has_cap = takes_cap(site) };
	ring_image(&out->wall, &plan, &build->wall, from, image);
	if (out->has_cap)
		ring_image(&out->cap, &plan, &build->cap, from, image);
	check(site, out);
}

/* ---- Figures --------------------------------------------------------------------------------- */

nm build_outline_length(const struct site *site, nm less)
{
	const struct outline *outline = site->room.outline;
	nm length = 0;

	for (int i = 0; i < outline->count; i++)
		length += outline->loops[i].perimeter * site->room.survey->cell +
			(i == 0 ? -less : less);
	return length;
}

/* The ring's area is its depth times the length of a course. A loop has four corners more that
 * turn one way than the other: for each the inner face is two depths shorter, round a hole
 * longer. */
static void measure_inside(struct wall *wall, const struct site *site)
{
	const struct survey *survey = site->room.survey;
	nm depth = wall->block.across;

	wall->inner_area = survey_area(survey->regions[wall->region].cells, survey->cell) -
		area_of(depth, build_outline_length(site, 4 * depth));
	wall->inner_perimeter = build_outline_length(site, 8 * depth);
}

static void count_up(struct wall *wall, int64_t beads)
{
	int64_t odd = (wall->courses + 1) / 2, even = wall->courses / 2;
	nm laid = odd * wall->odd.length + even * wall->even.length;
	double density = wall_density(wall->bed);

	wall->whole_blocks = odd * wall->odd.whole + even * wall->even.whole;
	wall->cut_pieces = odd * wall->odd.cut + even * wall->even.cut;
	wall->block_weight = density * wall_volume(wall->block.along, &wall->block);
	wall->weight = density * wall_volume(laid, &wall->block);
	/* Under every course but the first, and under the cap. */
	wall->bead = (double)beads * metres(laid - wall->odd.length + wall->cap.length);
}

void build_measure(struct wall *wall, const struct site *site, const struct build *build)
{
	*wall = (struct wall){
		.region = site->room.region,
		.bed = site->bed,
		.block = *bed_size(site->bed, BED_BLOCK),
		.joint = block_length(site->bed, BED_JOINT),
		.courses = (int)block_number(site->bed, BED_COURSES),
		.odd = build->wall.odd,
		.even = build->wall.even,
		.has_cap = build->has_cap,
		.cap = build->cap.odd,
	};
	if (wall->has_cap)
		wall->cap_block = *bed_size(site->bed, BED_CAP);
	site_check_inside(site, wall->block.across);
	measure_inside(wall, site);
	count_up(wall, site->job->beads);
}
