/* The rounder values of a metric plot. */
#include "support/runner.h"
#include "plot/block.h"

/* A rounder value may be a fifth off: rolls of 100 ft are sold as 25 m. Common practice, no
 * published source. */
static bool is_near(nm value, nm preset)
{
	nm apart = value > preset ? value - preset : preset - value;

	return apart <= preset / 5;
}

START_TEST(every_rounder_value_is_near_the_default_and_in_whole_millimetres)
{
	static const enum block_kind kinds[] = { BLOCK_ALLOW, BLOCK_BED, BLOCK_PATH, BLOCK_LAWN,
		BLOCK_FIXTURE, BLOCK_FENCE };
	int filled = 0;

	for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++) {
		struct block block = { .kind = kinds[i] };

		block_set_metric(&block);
		for (enum attribute a = block_first(kinds[i]); a <= block_last(kinds[i]); a++) {
			const struct attribute_row *row = attribute_row(a);
			const struct value *value = block_value(&block, a);

			if (!value->set)
				continue;
			filled++;
			if (row->rule.kind != VALUE_LENGTH)
				continue;
			ck_assert_int_eq(value->as.length % NM_PER_MM, 0);
			if (row->preset.set)
				ck_assert_msg(is_near(value->as.length, row->preset.as.length),
					"%s", row->keyword);
		}
		block_fini(&block);
	}
	ck_assert_int_eq(filled, 50);
}
END_TEST

START_TEST(only_what_is_in_the_table_is_set)
{
	struct block bed = { .kind = BLOCK_BED }, head = { .kind = BLOCK_HEAD };

	block_set_metric(&bed);
	ck_assert_int_eq(block_value(&bed, BED_BLOCK)->as.size.along, 400 * NM_PER_MM);
	ck_assert_int_eq(block_value(&bed, BED_EMBED)->as.length, 40 * NM_PER_MM);
	ck_assert(!block_value(&bed, BED_COURSES)->set);
	ck_assert(!block_value(&bed, BED_MIX)->set);
	block_set_metric(&head);
	for (enum attribute a = block_first(BLOCK_HEAD); a <= block_last(BLOCK_HEAD); a++)
		ck_assert(!block_value(&head, a)->set);
	block_fini(&bed);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("metric");
	TCase *fill = suite_case(suite, "fill");

	tcase_add_test(fill, every_rounder_value_is_near_the_default_and_in_whole_millimetres);
	tcase_add_test(fill, only_what_is_in_the_table_is_set);
	return suite;
}
