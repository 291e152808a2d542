#include "takeoff/fixtures.h"
#include "base/stop.h"

/* Whether cells left..right-1 of a row, beside the region, all belong to it or close it in. */
static bool closes_in(const struct survey *survey, int y, int left, int right, int region)
{
	if (y < 0 || y >= survey->rows || left < 0 || right > survey->columns)
		return false;
	for (size_t i = survey_run_at(survey, left, y);
		i < survey->row_runs[y + 1] && survey->runs[i].left < right; i++) {
		int beside = survey->runs[i].region;

		if (beside != region && (beside == NO_REGION ||
			!region_is_raised(&survey->regions[beside])))
			return false;
	}
	return true;
}

static bool run_is_inside(const struct survey *survey, const struct run *run, int y)
{
	return closes_in(survey, y, run->left - 1, run->right + 1, run->region) &&
		closes_in(survey, y - 1, run->left, run->right, run->region) &&
		closes_in(survey, y + 1, run->left, run->right, run->region);
}

void fixtures_count(struct fixtures *out, const struct basis *basis)
{
	const struct survey *survey = basis->survey;
	bool *is_outside = arena_new(basis->arena, (size_t)survey->region_count,
		sizeof *is_outside);

	*out = (struct fixtures){ 0, 0 };
	for (int y = 0; y < survey->rows && !stop_asked(); y++) {
		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
			const struct run *run = &survey->runs[i];

			if (run->class == CLASS_FIXTURE && !is_outside[run->region])
				is_outside[run->region] = !run_is_inside(survey, run, y);
		}
	}
	for (int i = 0; i < survey->region_count; i++)
		if (survey->regions[i].entry->class == CLASS_FIXTURE)
			(*(is_outside[i] ? &out->others : &out->inside))++;
}
