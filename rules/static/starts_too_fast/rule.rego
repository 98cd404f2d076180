# METADATA
# title: Filling starts too fast for a liquid that holds charge
# description: |
#   Until the end of the inlet is covered the liquid sprays and charges, in a space that may hold vapour
#   and air. Until then 1 m/s is the common limit.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: flows
#   scope: [flow_stated, carries_flammable, enters_from_above]
#   needs: [flows.velocity_mmps]
#   absent: [flows.carries_accumulator]
#   message: >-
#     The flammable liquid in run {run} {charge} and would start at {have_mmps}; until the inlet is
#     covered the limit is {need_mmps}
#   action: >-
#     Start at no more than this speed until the end of the inlet is covered by two diameters, then raise
#     the flow.
#   basis:
#     - document: API RP 2003
#       edition: ""
#       clause: "loading rates"
#       standing: recalled
#     - document: NFPA 77
#       edition: ""
#       clause: "first filling"
#       standing: recalled
package rules.static.starts_too_fast

report contains {
	"subject": f.id,
	"run": f.id,
	"charge": _charge(f),
	"have_mmps": f.velocity_mmps,
	"need_mmps": 1000,
} if {
	some f in input.flows
	f.flow_stated
	f.carries_flammable
	f.enters_from_above
	f.velocity_mmps > 1000
}

_charge(f) := "holds charge" if f.carries_accumulator == true

# Where the conductivity is unknown it counts as low.
_charge(f) := "may hold charge, its conductivity being unknown," if not _conductivity_known(f)

_conductivity_known(f) if f.carries_accumulator in {true, false}
