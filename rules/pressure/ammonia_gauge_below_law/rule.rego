# METADATA
# title: A gauge on an ammonia line does not reach the range the law asks
# description: |
#   The US ammonia rule wants gauges on containers and behind pumps that read up to 400 psi. A gauge of
#   shorter range may burst or pin where the pressure matters most.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: gauges
#   scope: ["regime=29 CFR 1910.111"]
#   needs: [gauges.full_scale_kpa]
#   message: >-
#     Gauge {part} reads up to {have_kpa}; on a container or behind a pump the ammonia rule asks for
#     {need_kpa}
#   action: "Fit an ammonia gauge that reads to 400 psi, unless this gauge sits on the low-pressure side."
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(12)(v)(c), (c)(2)(iii)"
#       standing: published
package rules.pressure.ammonia_gauge_below_law

report contains {
	"subject": g.id,
	"part": g.id,
	"have_kpa": g.full_scale_kpa,
	"need_kpa": _least,
} if {
	"29 CFR 1910.111" in input.line.regimes
	some g in input.gauges
	g.full_scale_kpa < _least
}

# 400 psi = 2757.9 kPa, rounded down like the range it is compared with.
_least := 2757
