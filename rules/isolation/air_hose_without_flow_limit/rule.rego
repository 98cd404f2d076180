# METADATA
# title: A wide compressed air hose has nothing that cuts the air when it bursts
# description: |
#   The US construction rule wants a device at the source or branch that cuts the pressure when a hose
#   fails, for air hoses wider than half an inch inside.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: releases
#   scope: ["regime=29 CFR 1926.302"]
#   needs: [releases.bore_mm]
#   message: >-
#     The air hose of run {run} is {have_mm} wide inside; above {need_mm} the construction rule asks for a
#     device that cuts the air when it bursts
#   action: "Fit an excess-flow valve at the source of the air, sized for the hose."
#   basis:
#     - document: 29 CFR 1926.302
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(7)"
#       standing: published
package rules.isolation.air_hose_without_flow_limit

report contains {"subject": r.id, "run": r.id, "have_mm": r.bore_mm, "need_mm": _half_inch_mm} if {
	"29 CFR 1926.302" in input.line.regimes
	some f in input.fluids
	f.air
	some r in input.releases
	r.bore_mm > _half_inch_mm
	count({p.id | some p in input.parts; p.run == r.id; p.kind == "excess-flow"}) == 0
}

# 1/2 in = 12.7 mm, rounded up like the bore it is compared with.
_half_inch_mm := 13
