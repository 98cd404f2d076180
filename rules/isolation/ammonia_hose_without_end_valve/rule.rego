# METADATA
# title: No valve stands behind an ammonia hose
# description: |
#   The US ammonia rule wants a shut-off valve at the discharge end of a hose that carries liquid from
#   container to container, so that what is in the hose stays there when it is uncoupled.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: [carries_ammonia, "regime=29 CFR 1910.111"]
#   needs: []
#   message: "The sheet shows no valve or closing coupling behind {part}"
#   action: "Fit a shut-off valve at the discharge end of the hose, or enter the one that is there."
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(8)(iv)"
#       standing: published
package rules.isolation.ammonia_hose_without_end_valve

report contains {"subject": h.id, "part": h.id} if {
	"29 CFR 1910.111" in input.line.regimes
	some h in input.hoses
	h.carries_ammonia
	some i, hose in input.parts
	hose.id == h.id
	count({p.id | some k, p in input.parts; k > i; p.run == h.run; p.kind in _closing}) == 0
}

_closing := {"breakaway", "check-valve", "coupling", "excess-flow", "nozzle", "valve"}
