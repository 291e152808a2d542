#include "support/fences.h"

#include "base/memory.h"
#include "base/text.h"

#include <check.h>
#include <stdio.h>

struct fence *fence_from(struct plot *plot, const char *runs, const char *gates)
{
	struct fence *fence = details_add_fence(&plot->details, memory_string("Fence"));
	struct route *run = NULL;
	struct leg gate = { { 0, 0 }, { 0, 0 } };
	struct place point;
	int length, points = 0;

	while (sscanf(runs, " %d,%d%n", &point.x, &point.y, &length) == 2) {
		runs += length;
		route_add(run = run ? run : fence_add_run(fence), point);
		if (*runs == ';') {
			runs++;
			run = NULL;
		}
	}
	while (gates && sscanf(gates, " %d,%d%n", &point.x, &point.y, &length) == 2) {
		gates += length;
		gates += *gates == ';';
		*(points % 2 ? &gate.to : &gate.from) = point;
		if (points++ % 2)
			legs_add(&fence->gates, gate);
	}
	return fence;
}

static void point_add(struct text *out, struct place point, const char *before)
{
	text_print(out, "%s%d,%d", before, point.x, point.y);
}

void fence_is(const struct fence *fence, const char *runs, const char *gates)
{
	struct text words = TEXT_EMPTY;

	for (size_t i = 0; i < fence->run_count; i++)
		for (int j = 0; j < fence->runs[i].count; j++)
			point_add(&words, fence->runs[i].points[j], j ? " " : i ? "; " : "");
	ck_assert_str_eq(words.bytes, runs);
	text_clear(&words);
	for (size_t i = 0; i < fence->gates.count; i++) {
		point_add(&words, fence->gates.items[i].from, i ? "; " : "");
		point_add(&words, fence->gates.items[i].to, " ");
	}
	ck_assert_str_eq(words.bytes, gates);
	text_fini(&words);
}
