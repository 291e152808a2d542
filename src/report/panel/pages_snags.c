#include "report/panel/pages.h"
#include "base/show.h"

enum { SHOWN_OF_A_CODE = 20 };

/* "B1 at 3 ft, 2 ft 6 in": from the plan's left and from its top. */
static const char *place(struct page_maker *maker, const struct snag *snag)
{
	struct text words = TEXT_EMPTY;
	nm cell = maker->takeoff->survey.cell;
	const char *kept;

	if (snag->region != NO_REGION) {
		char name[REGION_NAME_MOST];

		survey_region_name(&maker->takeoff->survey.regions[snag->region], name);
		text_print(&words, "%s ", name);
	}
	text_add(&words, "at ");
	show_length(&words, snag->cell.x * cell, maker->units);
	text_add(&words, ", ");
	show_length(&words, snag->cell.y * cell, maker->units);
	kept = arena_print(maker->arena, "%s", words.bytes);
	text_fini(&words);
	return kept;
}

/* All snags of one code, sorted together: how many, then the first of them. */
static void code(struct page_maker *maker, const struct snag *snags, int count)
{
	int shown = count < SHOWN_OF_A_CODE ? count : SHOWN_OF_A_CODE;

	pages_count(maker, snag_rule(snags->code)->word, count);
	for (int i = 0; i < shown; i++)
		pages_note(maker, "%s: %s", place(maker, &snags[i]), snags[i].text);
	if (count > SHOWN_OF_A_CODE)
		pages_note(maker, "and %d more.", count - shown);
}

void pages_snags(struct page_maker *maker)
{
	const struct takeoff *takeoff = maker->takeoff;
	int next;

	for (int i = 0; i < takeoff->snag_count; i = next) {
		for (next = i + 1; next < takeoff->snag_count; next++)
			if (takeoff->snags[next].code != takeoff->snags[i].code)
				break;
		code(maker, &takeoff->snags[i], next - i);
	}
	if (takeoff->snag_count == 0)
		pages_note(maker, "None found.");
}
