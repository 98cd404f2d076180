# METADATA
# title: More gas can blow through into a vented vessel than its vent passes
# description: |
#   Once the source has been pushed empty the gas behind the liquid rushes through the line into the
#   destination. The flow is worked out for the emptied line with the least friction, so less may
#   come, and no more.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: flows
#   scope: [gas_follows, vent_stated]
#   needs: [flows.gas_follows_mlps, flows.vent_mlps]
#   message: >-
#     Once its source is empty, up to {need_mlps} of free gas blows through run {run}; the vent of the
#     destination passes {have_mlps}
#   action: >-
#     Throttle the gas or the line, enlarge the vent, or have something that ends the transfer before the
#     source is empty and somebody who watches it.
#   basis:
#     - document: API Std 2000, venting atmospheric and low-pressure storage tanks
#       edition: "7th edition 2014"
#       clause: other circumstances, pressure transfer blowoff
#       standing: recalled
package rules.flow.gas_blows_past_vent

report contains {"subject": f.id, "run": f.id, "have_mlps": f.vent_mlps, "need_mlps": f.gas_follows_mlps} if {
	some f in input.flows
	f.gas_follows
	f.vent_stated
	f.vent_mlps < f.gas_follows_mlps
}
