# METADATA
# title: The equalising hole of an ammonia excess-flow valve is too wide
# description: |
#   The US ammonia rule lets the valve have a hole for the pressures to even out, no wider than a
#   drill No. 60. Through a wider one a broken hose keeps leaking. The diameter of that drill is
#   recalled.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: excess_flows
#   scope: ["regime=29 CFR 1910.111"]
#   needs: [excess_flows.bypass_um]
#   message: "{part} has an equalising hole of {have_um}; the law allows {need_um}"
#   action: "Fit an excess-flow valve whose equalising hole is no wider than a drill No. 60."
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(6)(vii)"
#       standing: published
#     - document: ASME B94.11M
#       edition: "not stated"
#       clause: "drill sizes"
#       standing: recalled
package rules.isolation.excess_flow_bypass_above_law

report contains {
	"subject": x.id,
	"part": x.id,
	"have_um": x.bypass_um,
	"need_um": _drill_60,
} if {
	"29 CFR 1910.111" in input.line.regimes
	some x in input.excess_flows
	x.bypass_um > _drill_60
}

# 0.040 in = 1.016 mm.
_drill_60 := 1016
