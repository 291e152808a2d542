/* Pieces of cells counted from an axis: against going from cell to cell. */

#include "editor/lattice.h"
#include "support/runner.h"

enum { CELLS_MOST = 40, SIZE_MOST = 7 };

START_TEST(pieces_follow_each_other_without_a_gap)
{
	for (int axis = 0; axis <= 2 * CELLS_MOST; axis++)
		for (int size = 1; size <= SIZE_MOST; size++) {
			struct lattice lattice = { axis, size };

			for (int cell = 0; cell < CELLS_MOST; cell++) {
				int piece = lattice_piece(&lattice, cell);
				int first = lattice_first(&lattice, piece);
				int beyond = lattice_first(&lattice, piece + 1);

				ck_assert(first <= cell && cell < beyond);
				ck_assert(beyond - first == size ||
					(axis % 2 && piece == 0 && beyond - first == 1));
			}
		}
}
END_TEST

/* Cell x is the image of axis - 1 - x. */
START_TEST(images_are_in_pieces_that_are_images)
{
	for (int columns = 1; columns <= CELLS_MOST; columns++)
		for (int size = 1; size <= SIZE_MOST; size++) {
			struct lattice lattice = { columns, size };

			for (int x = 0; x < columns; x++)
				ck_assert_int_eq(lattice_piece(&lattice, x) +
					lattice_piece(&lattice, columns - 1 - x),
					columns % 2 ? 0 : -1);
		}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("lattice");
	TCase *pieces = suite_case(suite, "pieces");

	tcase_add_test(pieces, pieces_follow_each_other_without_a_gap);
	tcase_add_test(pieces, images_are_in_pieces_that_are_images);
	return suite;
}
