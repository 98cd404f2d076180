# METADATA
# title: The liquid has too little time to lose its charge behind a fine filter
# description: |
#   A fine filter charges a liquid many times more than pipe does. Half a minute in earthed, conducting
#   pipe or hose lets the charge go before the vessel.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: flows
#   scope: [flow_stated, carries_flammable, fine_filter]
#   needs: [flows.residence_ms]
#   absent: [flows.carries_accumulator]
#   message: >-
#     The flammable liquid in run {run} {charge} and has {have_ms} behind the fine filter; {need_ms} is
#     the common least
#   action: >-
#     Lower the flow, move the filter away from the vessel, or add an earthed relaxation vessel behind it.
#   basis:
#     - document: NFPA 77
#       edition: ""
#       clause: "relaxation behind filters"
#       standing: recalled
#     - document: API RP 2003
#       edition: ""
#       clause: "loading rates"
#       standing: recalled
package rules.static.too_little_relaxation

report contains {
	"subject": f.id,
	"run": f.id,
	"charge": _charge(f),
	"have_ms": f.residence_ms,
	"need_ms": 30000,
} if {
	some f in input.flows
	f.flow_stated
	f.carries_flammable
	f.fine_filter
	f.residence_ms < 30000
}

_charge(f) := "holds charge" if f.carries_accumulator == true

# Where the conductivity is unknown it counts as low.
_charge(f) := "may hold charge, its conductivity being unknown," if not _conductivity_known(f)

_conductivity_known(f) if f.carries_accumulator in {true, false}
