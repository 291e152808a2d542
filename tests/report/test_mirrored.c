/* Two formal plans, mirrored left and right, of an even and of an odd number of cells: every figure
 * of a bed, path, lawn or fixture is that of its image, every post, gate and panel has its image,
 * and beds that are images share one laying sheet. */
#include "report/text/print.h"
#include "support/fences.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static struct garden garden;

/* The left part and the columns of the axis, if any: the right part is the image of the left. */
static const char *const left[] = {
	"..............", ".ppppppppppppp", ".ppppppppppppp", ".ppppppppppppp",
	".pppbbbbbbbppp", ".pppbbbbbbbppp", ".pppbbbbbbbppp", ".pppbbbbbbbppp",
	".pppbbbblllppp", ".pppbbbblllppp", ".pppbbbblllppp", ".ppplllllllppp",
	".ppplllllllppp", ".pppppppppppSS", ".pppppppppppSS", ".ppppppppppppp",
	".pppppppppcccc", ".pppppppppcccc", ".pppppppppcccc", "..............", NULL,
};
enum { LEFT = 14, ROWS = 20, MIDDLE_MOST = 1, COLUMNS_MOST = 2 * LEFT + MIDDLE_MOST };

/* Of 28 columns, or 29 with one on the axis that is as the cells beside it. */
static void draw(int middle)
{
	static char rows[ROWS][COLUMNS_MOST + 1];
	const char *ground[ROWS + 1] = { NULL };
	int columns = 2 * LEFT + middle;
	char run[80];

	for (int y = 0; y < ROWS; y++) {
		memset(rows[y], 0, sizeof rows[y]);
		memcpy(rows[y], left[y], LEFT);
		if (middle)
			rows[y][LEFT] = left[y][LEFT - 1];
		for (int x = 0; x < LEFT; x++)
			rows[y][columns - 1 - x] = left[y][x];
		ground[y] = rows[y];
	}
	garden_rows(&garden, ground);
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	plot_set(&garden.plot, 'b', BED_CAP, "16 in x 8 in x 2 in");
	snprintf(run, sizeof run, "0,0 0,%d %d,%d %d,0", ROWS, columns, ROWS, columns);
	fence_from(&garden.plot, run, NULL);
	garden_count(&garden);
}

static int columns(void)
{
	return garden.plot.ground.columns;
}

static int image_of(int region)
{
	const struct region *r = &garden.takeoff.survey.regions[region];

	return survey_region_at(&garden.takeoff.survey, columns() - 1 - r->first_cell.x,
		r->first_cell.y);
}

static void same(double a, double b, const char *what, int region)
{
	ck_assert_msg(fabs(a - b) <= 1e-9 * fmax(1, fabs(a)), "%s of region %d: %.9f and %.9f",
		what, region, a, b);
}

/* ---- Regions --------------------------------------------------------------------------------- */

static void check_beds(void)
{
	const struct takeoff *t = &garden.takeoff;

	ck_assert_int_eq(t->walls.count, 3);
	ck_assert_int_eq(t->walls.not_laid_count + t->walls.caps_not_laid, 0);
	for (int i = 0; i < t->fills.count; i++) {
		const struct fill *one = &t->fills.list[i];
		const struct fill *other = fills_find(&t->fills, image_of(one->region));

		ck_assert_ptr_nonnull(other);
		same((double)one->soil_depth, (double)other->soil_depth, "depth", one->region);
		same(one->soil, other->soil, "soil", one->region);
		same(one->order, other->order, "order", one->region);
		same(one->mulch, other->mulch, "mulch", one->region);
		for (int j = 0; j < one->part_count; j++)
			same(one->parts[j].buy, other->parts[j].buy, "part", one->region);
	}
	for (int i = 0; i < t->walls.count; i++) {
		const struct wall *one = &t->walls.list[i];
		const struct wall *other = walls_find(&t->walls, image_of(one->region));

		ck_assert_ptr_nonnull(other);
		ck_assert_int_eq(one->whole_blocks, other->whole_blocks);
		ck_assert_int_eq(one->cut_pieces, other->cut_pieces);
		ck_assert_int_eq(one->cap.cut, other->cap.cut);
		same(one->weight, other->weight, "wall", one->region);
		same(one->bead, other->bead, "bead", one->region);
	}
}

static const struct dig *dig_of(int region, enum dig_part part)
{
	for (int i = 0; i < garden.takeoff.earthwork.count; i++)
		if (garden.takeoff.earthwork.rows[i].region == region &&
			garden.takeoff.earthwork.rows[i].part == part)
			return &garden.takeoff.earthwork.rows[i];
	return NULL;
}

static void check_ground(void)
{
	const struct takeoff *t = &garden.takeoff;
	int images = 0;

	for (int i = 0; i < t->earthwork.count; i++) {
		const struct dig *one = &t->earthwork.rows[i], *other;

		if (one->region == NO_REGION)
			continue;
		other = dig_of(image_of(one->region), one->part);
		ck_assert_ptr_nonnull(other);
		ck_assert_int_eq(one->depth, other->depth);
		same(one->area, other->area, "dug area", one->region);
		images += one != other;
	}
	ck_assert_int_gt(images, 0);
	for (int i = 0; i < t->lawns.count; i++)
		for (int j = 0; j < t->lawns.count; j++)
			if (t->lawns.list[j].region == image_of(t->lawns.list[i].region))
				same(t->lawns.list[i].order, t->lawns.list[j].order, "lawn soil",
					t->lawns.list[i].region);
	ck_assert_int_eq(t->lawns.count, 2);
}

/* ---- The fence ------------------------------------------------------------------------------- */

static nm across(nm x)
{
	return columns() * garden.takeoff.survey.cell - x;
}

static void check_fence(void)
{
	const struct fencing *fence = &garden.takeoff.fences.list[0];

	for (int i = 0; i < fence->post_count; i++) {
		int found = 0;

		for (int j = 0; j < fence->post_count; j++)
			found += fence->posts[j].kind == fence->posts[i].kind &&
				fence->posts[j].at.y == fence->posts[i].at.y &&
				fence->posts[j].at.x == across(fence->posts[i].at.x);
		ck_assert_msg(found == 1, "post %d has %d images", i, found);
	}
	for (int i = 0; i < fence->leg_count; i++) {
		const struct fence_leg *one = &fence->legs[i];
		int found = 0;

		for (int j = 0; j < fence->leg_count; j++) {
			const struct fence_leg *other = &fence->legs[j];
			nm low = one->from.x < one->to.x ? one->from.x : one->to.x;
			nm high = other->from.x > other->to.x ? other->from.x : other->to.x;

			found += other->length == one->length && high == across(low) &&
				(other->from.y == one->from.y || other->from.y == one->to.y) &&
				other->whole == one->whole && other->cut_count == one->cut_count;
		}
		ck_assert_msg(found >= 1, "leg %d has no image", i);
	}
	ck_assert_int_ge(fence->leg_count, 3);
}

START_TEST(every_figure_is_that_of_its_image)
{
	draw(_i);
	ck_assert_uint_eq(garden.takeoff.snags.count > 0 &&
		garden.takeoff.snags.list[garden.takeoff.snags.count - 1].code ==
		SNAG_MIRROR_BROKEN, 0);
	check_beds();
	check_ground();
	check_fence();
	garden_fini(&garden);
}
END_TEST

START_TEST(beds_that_are_images_have_one_sheet)
{
	struct text text = TEXT_EMPTY;

	draw(_i);
	garden_print(&garden, &text, "mirrored.plot", PARTS_ALL);
	ck_assert_ptr_nonnull(strstr(text.bytes, "B2: B1, left for right."));
	text_fini(&text);
	garden_fini(&garden);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("mirrored");
	TCase *plans = suite_case(suite, "plans");

	tcase_add_loop_test(plans, every_figure_is_that_of_its_image, 0, 2);
	tcase_add_loop_test(plans, beds_that_are_images_have_one_sheet, 0, 2);
	return suite;
}
