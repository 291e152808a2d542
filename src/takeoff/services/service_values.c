#include "takeoff/services/service_values.h"
#include "base/number.h"

/* Imperial, metric. */
static const nm depths[SERVICE_KINDS][UNITS_METRIC + 1] = {
	[SERVICE_WATER] = { 18 * NM_PER_INCH, 450 * NM_PER_MM },
	[SERVICE_GAS] = { 18 * NM_PER_INCH, 450 * NM_PER_MM },
	[SERVICE_POWER] = { 24 * NM_PER_INCH, 600 * NM_PER_MM },
	[SERVICE_TELECOM] = { 12 * NM_PER_INCH, 300 * NM_PER_MM },
	[SERVICE_DRAIN] = { 12 * NM_PER_INCH, 300 * NM_PER_MM },
	[SERVICE_OTHER] = { 18 * NM_PER_INCH, 450 * NM_PER_MM },
};
static const nm narrow[] = { 6 * NM_PER_INCH, 150 * NM_PER_MM };
static const nm wide[] = { 12 * NM_PER_INCH, 300 * NM_PER_MM };

bool service_has_depth(const struct service *service)
{
	return service->is_to_lay || block_value(&service->block, SERVICE_DEPTH)->set;
}

nm service_usual_depth(const struct plot *plot, enum service_kind kind)
{
	nm usual = depths[kind][plot_units(plot)];

	return kind != SERVICE_WATER ? usual :
		nm_most(usual, block_length(&plot->details.allow, ALLOW_FROST));
}

nm service_depth(const struct plot *plot, const struct service *service)
{
	if (block_value(&service->block, SERVICE_DEPTH)->set)
		return block_length(&service->block, SERVICE_DEPTH);
	return service->is_to_lay ? service_usual_depth(plot, service->kind) : 0;
}

nm service_usual_trench(const struct plot *plot, enum service_kind kind)
{
	return kind == SERVICE_DRAIN ? wide[plot_units(plot)] : narrow[plot_units(plot)];
}

nm service_trench(const struct plot *plot, const struct service *service)
{
	if (block_value(&service->block, SERVICE_TRENCH)->set)
		return block_length(&service->block, SERVICE_TRENCH);
	return service_usual_trench(plot, service->kind);
}
