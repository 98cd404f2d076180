# METADATA
# title: A broken ammonia hose would empty the vessel
# description: |
#   The US rule wants a check valve, an excess-flow valve or a remote shut-off at both vessels, so that
#   a severed hose drains neither.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: line
#   scope: ["regime=29 CFR 1910.111", "!passive_shutoff"]
#   needs: [line.remote_stop]
#   message: "No check valve, excess-flow valve, breakaway or remote stop holds the ammonia back if a hose breaks"
#   action: >-
#     Fit a check valve on the filling side and a correctly sized excess-flow valve on the other, or a
#     remote shut-off at both vessels.
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(12)(vii)"
#       standing: published
package rules.isolation.ammonia_hose_break_not_contained

report contains {"subject": "line"} if {
	"29 CFR 1910.111" in input.line.regimes
	not input.line.passive_shutoff
	input.line.remote_stop == false
	count(_holding_back) == 0
}

_holding_back := {p.id |
	some p in input.parts
	p.kind in {"breakaway", "check-valve", "excess-flow"}
}
