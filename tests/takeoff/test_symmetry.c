/* Layouts that are their own images: which ways there are, and that the cheapest is found. */

#include "takeoff/walls/ring.h"
#include "takeoff/walls/symmetry.h"

#include "support/pieces.h"
#include "support/plots.h"
#include "support/runner.h"

#define INCH NM_PER_INCH
#define BIT(turn) (1U << (turn))

enum { SIDES_MOST = 12 };
#define FAULT INT64_C(1000000)

static struct beds beds;
static struct outline outline;

static void teardown(void)
{
	beds_fini(&beds);
}

static int list_of(struct symmetry list[SYMMETRIES_MOST], const char *const *rows)
{
	plot_from_rows(&beds.plot, rows);
	beds_lay(&beds);
	outline_trace(&outline, &beds.arena, &beds.plot, &beds.takeoff.survey, 0);
	return symmetry_list(list, &beds.arena, &outline);
}

START_TEST(a_rectangle_has_both_flips_and_the_half_turn_a_square_the_quarters_too)
{
	struct symmetry list[SYMMETRIES_MOST];

	ck_assert_int_eq(list_of(list, (const char *const[]){ "bbb", "bbb", NULL }), 4);
	ck_assert_uint_eq(list[0].turns, BIT(TURN_NONE) | BIT(TURN_LEFT_RIGHT) |
		BIT(TURN_TOP_BOTTOM) | BIT(TURN_HALF));
	ck_assert_int_eq(list[0].count, 3);
	ck_assert_uint_eq(list[1].turns, BIT(TURN_NONE) | BIT(TURN_LEFT_RIGHT));
	ck_assert_uint_eq(list[2].turns, BIT(TURN_NONE) | BIT(TURN_TOP_BOTTOM));
	ck_assert_uint_eq(list[3].turns, BIT(TURN_NONE) | BIT(TURN_HALF));
	teardown();
	ck_assert_int_eq(list_of(list, (const char *const[]){ "bb", "bb", NULL }), 5);
	ck_assert_uint_eq(list[1].turns, BIT(TURN_NONE) | BIT(TURN_QUARTER) | BIT(TURN_HALF) |
		BIT(TURN_QUARTER_BACK));
}
END_TEST

START_TEST(what_is_its_own_image_over_a_diagonal_alone_has_none)
{
	struct symmetry list[SYMMETRIES_MOST];

	ck_assert_int_eq(list_of(list, (const char *const[]){ "bb", "b.", NULL }), 0);
	teardown();
	ck_assert_int_eq(list_of(list, (const char *const[]){ "bbb", ".b.", NULL }), 1);
	ck_assert_uint_eq(list[0].turns, BIT(TURN_NONE) | BIT(TURN_LEFT_RIGHT));
}
END_TEST

START_TEST(of_turns_that_come_to_the_same_the_first_is_taken)
{
	unsigned int both = BIT(TURN_NONE) | BIT(TURN_LEFT_RIGHT);

	ck_assert_int_eq(symmetry_first_turn(both, TURN_LEFT_RIGHT), TURN_NONE);
	ck_assert_int_eq(symmetry_first_turn(both, TURN_HALF), TURN_TOP_BOTTOM);
	ck_assert_int_eq(symmetry_first_turn(BIT(TURN_NONE), TURN_HALF), TURN_HALF);
	ck_assert_int_eq(symmetry_first_turn(both, TURN_QUARTER_BACK), TURN_QUARTER_BACK);
	ck_assert_int_eq(symmetry_first_turn(both, TURN_RISING), TURN_QUARTER);
}
END_TEST

/* ---- Against trying all ---------------------------------------------------------------------- */

static struct side side_at(const struct loop *loop, int at, const bool *through)
{
	int next = (at + 1) % loop->count;

	return (struct side){ outline_side(loop, at) * beds.takeoff.survey.cell,
		loop->corners[at].reflex, loop->corners[next].reflex, through[at], !through[next],
		false };
}

static bool is_kept(const struct symmetry *symmetry, const bool *through, int sides)
{
	for (int i = 0; i < symmetry->count; i++) {
		const struct image *image = &symmetry->images[i];

		for (int c = 0; c < sides; c++)
			if (through[image_corner(image, 0, c, sides)] !=
				(through[c] != turn_is_flip(image->turn)))
				return false;
	}
	return true;
}

static bool is_own(const struct symmetry *symmetry, int side, int sides)
{
	for (int i = 0; i < symmetry->count; i++)
		if (turn_is_flip(symmetry->images[i].turn) &&
			image_side(&symmetry->images[i], 0, side, sides) == side)
			return true;
	return false;
}

/* Marks a side and its images; returns how many they are. */
static int see_images(const struct symmetry *symmetry, int side, int sides, bool *seen)
{
	int count = 1;

	seen[side] = true;
	for (int i = 0; i < symmetry->count; i++) {
		int image = image_side(&symmetry->images[i], 0, side, sides);

		count += !seen[image];
		seen[image] = true;
	}
	return count;
}

/* Of all choices that are their own images; INT64_MAX where none can be laid. */
static int64_t cheapest(const struct symmetry *symmetry, const struct masonry *masonry)
{
	const struct loop *loop = &outline.loops[0];
	struct side_book *book = side_book_new(&beds.arena);
	int64_t best = INT64_MAX;
	int first = 0;

	/* Laid from the first side on that is its own image, the others as images. */
	for (int i = loop->count - 1; i >= 0; i--)
		first = is_own(symmetry, i, loop->count) ? i : first;
	for (int choice = 0; choice < 1 << loop->count; choice++) {
		bool through[SIDES_MOST], can_be = true, seen[SIDES_MOST] = { false };
		int64_t cost = 0;

		for (int i = 0; i < loop->count; i++)
			through[i] = choice >> i & 1;
		if (!is_kept(symmetry, through, loop->count))
			continue;
		for (int i = 0; i < loop->count && can_be; i++) {
			int at = (first + i) % loop->count, images = 0;
			struct side side = side_at(loop, at, through);
			const struct bond *bond;

			if (seen[at])
				continue;
			images = see_images(symmetry, at, loop->count, seen);
			side.mirrored = is_own(symmetry, at, loop->count);
			bond = side_bond(book, &side, masonry);
			can_be = bond != NULL;
			if (can_be)
				cost += images * ((masonry->courses + 1) / 2 * bond->odd.cut +
					masonry->courses / 2 * bond->even.cut +
					FAULT * (2 * !bond->holds + !bond->corners_hold));
		}
		best = can_be && cost < best ? cost : best;
	}
	return best;
}

static int64_t cost_of(const struct ring *ring, int courses)
{
	int64_t cost = (courses + 1) / 2 * ring->odd.cut + courses / 2 * ring->even.cut;

	for (int i = 0; i < ring->fault_count; i++)
		cost += FAULT * (2 * ring->faults[i].is_unbonded + (ring->faults[i].corner > 0));
	return cost;
}

/* Lays it and holds it to its cost and its images. Returns true where it can be laid. */
static bool check_symmetry(const struct symmetry *symmetry, const struct masonry *masonry)
{
	struct ring ring;
	int64_t least = cheapest(symmetry, masonry);
	bool is_laid = ring_lay(&ring, &(struct ring_plan){ .arena = &beds.arena,
		.book = side_book_new(&beds.arena), .outline = &outline,
		.cell = beds.takeoff.survey.cell, .masonry = *masonry, .symmetry = symmetry });

	ck_assert(is_laid == (least < INT64_MAX));
	if (!is_laid)
		return false;
	ck_assert_int_eq(cost_of(&ring, masonry->courses), least);
	for (int i = 0; i < symmetry->count; i++) {
		enum turn turn = symmetry->images[i].turn;

		ck_assert(pieces_are_own_image(&beds, 0, &ring.odd, masonry->depth, turn));
		ck_assert(masonry->courses == 1 ||
			pieces_are_own_image(&beds, 0, &ring.even, masonry->depth, turn));
	}
	return true;
}

/* A bed of one loop that is its own image: a rectangle, a cross, a tee, a zed. */
static void bed_at_random(struct random *random)
{
	int x = random_between(random, 3, 7), y = random_between(random, 3, 7);
	int width = 3 * x, height = 2 * y + random_between(random, 3, 6);
	int kind = random_below(random, 4);

	beds_rectangle(&beds.plot, width, height);
	for (int i = 0; i < width * height; i++) {
		int across = i % width / x;
		int down = i / width < y ? 0 : i / width < height - y ? 1 : 2;

		if ((kind == 1 && across != 1 && down != 1) ||
			(kind == 2 && across != 1 && down > 0) ||
			(kind == 3 && ((across == 0 && down == 0) || (across == 2 && down == 2))))
			beds.plot.ground.cells[i] = OPEN_GROUND;
	}
	beds_set_cell(&beds.plot, random_between(random, 8, 12) * INCH);
	beds_lay(&beds);
	outline_trace(&outline, &beds.arena, &beds.plot, &beds.takeoff.survey, 0);
}

START_TEST(no_layout_that_is_its_own_image_is_cheaper)
{
	struct random random = { 65 };
	int laid = 0;

	for (int n = 0; n < 150; n++) {
		struct symmetry list[SYMMETRIES_MOST];
		nm block = random_between(&random, 12, 18) * INCH;
		struct masonry masonry = { block, block / 2 - random_below(&random, 3) * INCH,
			bond_shortest(block, 3 * INCH), random_between(&random, 1, 4) };
		int count;

		bed_at_random(&random);
		count = symmetry_list(list, &beds.arena, &outline);
		ck_assert_int_gt(count, 0);
		for (int i = 0; i < count; i++)
			laid += check_symmetry(&list[i], &masonry);
		beds_fini(&beds);
	}
	ck_assert_int_gt(laid, 200);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("symmetry");
	TCase *ways = suite_case(suite, "ways");
	TCase *random = suite_case(suite, "beds at random");

	tcase_add_checked_fixture(ways, NULL, teardown);
	tcase_add_test(ways,
		a_rectangle_has_both_flips_and_the_half_turn_a_square_the_quarters_too);
	tcase_add_test(ways, what_is_its_own_image_over_a_diagonal_alone_has_none);
	tcase_add_test(ways, of_turns_that_come_to_the_same_the_first_is_taken);
	tcase_add_test(random, no_layout_that_is_its_own_image_is_cheaper);
	return suite;
}
